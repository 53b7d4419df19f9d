"""What is asked of the way of a load: where, how it moves, wind, tag lines. Nothing counts until `way` is said."""

from checklist_app.mechanics.sway.wind import Shape
from checklist_app.operations.graph import Entry, NotUsed
from checklist_app.operations.obtained import ANGLE_HOW, LENGTH_HOW, SPEED_HOW, WIND_HOW
from checklist_app.operations.straight_lift.ways import TagLine, Way

WAY = (
    Entry("way", "where it is lifted, and how it moves", Way, default=NotUsed("not asked")),
    Entry(
        "load_length_m", "length of the load", float, "m", 0.05, 30.0, (0.5, 2.0), LENGTH_HOW,
        hint="Lengthwise, over everything that sticks out.",
    ),
    Entry(
        "load_width_m", "width of the load", float, "m", 0.05, 15.0, (0.3, 1.5), LENGTH_HOW,
        hint="Crosswise, over everything that sticks out.",
    ),
    Entry(
        "side_room_m", "room beside the load", float, "m", 0.01, 50.0, (0.5, 2.0), LENGTH_HOW,
        hint="The least on its whole way, to either side, as far as the load can turn.",
    ),
    Entry(
        "hook_below_m", "hook below its trolley or jib head", float, "m", 0.1, 60.0, (1.0, 7.0), LENGTH_HOW,
        hint="From where the hoist line hangs down to the hook's saddle, at its longest on this way.",
    ),
    Entry(
        "travel_speed_m_s", "travelling speed", float, "m/s", 0.02, 3.0, (0.1, 0.7), SPEED_HOW,
        hint="The fastest that the hook goes sideways. A slow walk is 0.5 m/s, 20 m/min are 0.33 m/s.",
    ),
    Entry(
        "stopping_m", "way to stop", float, "m", 0.02, 10.0, (0.1, 0.7), LENGTH_HOW,
        hint="What the trolley still runs from letting go of the button until it stands.",
    ),
    Entry(
        "out_of_step_m", "one hook ahead of the other", float, "m", 0.0, 3.0, (0.02, 0.5), LENGTH_HOW,
        hint="The most that one gets ahead on the way, or runs on after the other stands. Moved one at a time: the"
             " length of a step.",
    ),
    Entry(
        "gust_m_s", "strongest gust", float, "m/s", 1.0, 45.0, (3.0, 12.0), WIND_HOW,
        hint="A gust, not the mean wind, at the height of the load. Calm counts as 1 m/s.",
    ),
    Entry("wind_shape", "shape that meets the wind", Shape),
    Entry(
        "side_area_m2", "largest side of the load", float, "m²", 0.01, 200.0, (0.5, 5.0), may_be_none=True,
        default=NotUsed("the longer side times the height"),
        hint="What the wind meets, with covers and sheets. Left open: the longer side times the height.",
    ),
    Entry(
        "side_area_z_m", "middle of that side", float, "m", -20.0, 20.0, (-2.0, 2.0), LENGTH_HOW, may_be_none=True,
        default=NotUsed("half way between underside and top"),
        hint="Measured as the centre of gravity is. Left open: half way between underside and top.",
    ),
    Entry("tag_line", "tag line", TagLine),
    Entry(
        "tag_length_m", "tag line, from the load to the hand", float, "m", 0.5, 50.0, (3.0, 9.0), LENGTH_HOW,
    ),
    Entry(
        "tag_below_deg", "tag line below level", float, "°", 0.0, 60.0, (10.0, 40.0), ANGLE_HOW,
        hint="At the load. The lower the hand and the shorter the line, the steeper.",
    ),
    Entry(
        "tag_off_plumb_m", "load held out of plumb by the tag line", float, "m", 0.0, 5.0, (0.0, 0.3), LENGTH_HOW,
        hint="0 where the line only keeps it from turning.",
    ),
)
