"""Where the frozen program begins."""

import sys

from evenwater.__main__ import main

sys.exit(main())
