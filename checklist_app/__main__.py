"""`python -m checklist_app …`."""
import sys

from checklist_app.cli import main

sys.exit(main())
