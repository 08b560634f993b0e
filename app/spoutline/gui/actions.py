"""The commands of the window as records: menu, shortcut, words. The window binds each to one call."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen


class MenuId(StrEnum):
    """Menus in bar order; the value is the title with its mnemonic."""

    SURVEY = "&Survey"
    CHANGE = "&Edit"
    POSITION = "&Position"
    GO = "&Go"
    SHOW = "&View"
    HELP = "&Help"


class ActionId(StrEnum):
    """Every command of the window."""

    START = "start"
    SURVEYS = "surveys"
    NEW_SURVEY = "new_survey"
    IMPORT_SURVEY = "import_survey"
    IMPORT_TABLE = "import_table"
    EXPORT_SURVEY = "export_survey"
    RECENT = "recent"
    PREFERENCES = "preferences"
    BACKUPS = "backups"
    QUIT = "quit"
    UNDO = "undo"
    REDO = "redo"
    UNDO_LIST = "undo_list"
    ADD_POSITION = "add_position"
    DUPLICATE_POSITION = "duplicate_position"
    RENAME_POSITION = "rename_position"
    REMOVE_POSITION = "remove_position"
    COPY_ANSWERS = "copy_answers"
    WHAT_IF = "what_if"
    WEIGH = "weigh"
    AGREE = "agree"
    WITHDRAW = "withdraw"
    AGREEMENTS = "agreements"
    DISPENSER_TYPES = "dispenser_types"
    REPEAT_DISPENSER = "repeat_dispenser"
    MIRROR_DISPENSER = "mirror_dispenser"
    SEARCH = "search"
    WALK = "walk"
    PREVIOUS_STEP = "previous_step"
    NEXT_STEP = "next_step"
    PREVIOUS_POSITION = "previous_position"
    NEXT_POSITION = "next_position"
    SITE = "site"
    PART_QUESTION = "part_question"
    BILL = "bill"
    GRID = "grid"
    QUOTATIONS = "quotations"
    CONVERSION = "conversion"
    INSTALLER = "installer"
    CATALOGUES = "catalogues"
    PROGRAMME = "programme"
    PROFILES = "profiles"
    UNITS_SI = "units_si"
    UNITS_US = "units_us"
    ENLARGE = "enlarge"
    REDUCE = "reduce"
    FIT_DRAWING = "fit_drawing"
    HELP = "help"
    TOUR = "tour"
    KEYS = "keys"
    ABOUT = "about"


@frozen(kw_only=True)
class ActionRecord:
    """One command: where it stands, what it is called, which keys start it, what it does in one sentence."""

    id: ActionId
    menu: MenuId
    title: str
    keys: str = ""
    more_keys: tuple[str, ...] = ()
    hint: str = ""
    checkable: bool = False
    starts_group: bool = False


ACTIONS: tuple[ActionRecord, ...] = (
    ActionRecord(
        id=ActionId.START,
        menu=MenuId.SURVEY,
        title="Start &view",
        keys="Ctrl+Home",
        hint="Surveys changed last, a new one, a file, the demonstration.",
    ),
    ActionRecord(
        id=ActionId.SURVEYS,
        menu=MenuId.SURVEY,
        title="&All surveys…",
        keys="Ctrl+O",
        hint="Open, add or remove surveys of the book.",
    ),
    ActionRecord(
        id=ActionId.NEW_SURVEY,
        menu=MenuId.SURVEY,
        title="&New survey…",
        keys="Ctrl+N",
        hint="Start a survey of another site.",
    ),
    ActionRecord(
        id=ActionId.IMPORT_SURVEY,
        menu=MenuId.SURVEY,
        title="&Read from file…",
        keys="Ctrl+Shift+O",
        hint="Put a survey file into the book and open it.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.RECENT,
        menu=MenuId.SURVEY,
        title="R&ecent files",
        hint="Survey files that were read or written lately.",
    ),
    ActionRecord(
        id=ActionId.IMPORT_TABLE,
        menu=MenuId.SURVEY,
        title="Read positions from a &table…",
        keys="Ctrl+Shift+T",
        hint="Add positions from a CSV file or a workbook; columns are mapped first, faults told cell by cell.",
    ),
    ActionRecord(
        id=ActionId.EXPORT_SURVEY,
        menu=MenuId.SURVEY,
        title="&Write to file…",
        keys="Ctrl+Shift+S",
        hint="Write this survey to a file. The book keeps every change by itself.",
    ),
    ActionRecord(
        id=ActionId.BACKUPS,
        menu=MenuId.SURVEY,
        title="Bac&kups…",
        keys="Ctrl+Shift+B",
        hint="What is kept of the book, one more now, or one put back in its place.",
        starts_group=True,
    ),
    ActionRecord(id=ActionId.QUIT, menu=MenuId.SURVEY, title="&Quit", keys="Ctrl+Q", starts_group=True),
    ActionRecord(id=ActionId.UNDO, menu=MenuId.CHANGE, title="&Undo", keys="Ctrl+Z", hint="Take back the last change."),
    ActionRecord(
        id=ActionId.REDO,
        menu=MenuId.CHANGE,
        title="&Redo",
        keys="Ctrl+Y",
        more_keys=("Ctrl+Shift+Z",),
        hint="Make the change again that was taken back.",
    ),
    ActionRecord(
        id=ActionId.UNDO_LIST,
        menu=MenuId.CHANGE,
        title="&Steps taken…",
        keys="Ctrl+Shift+J",
        hint="Every change of this survey since it was opened; go back to any of them, and forward again.",
    ),
    ActionRecord(
        id=ActionId.PREFERENCES,
        menu=MenuId.CHANGE,
        title="&Preferences…",
        keys="Ctrl+,",
        hint="Language, units, theme, catalog, usual local rules, data folder and backups in one place.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.ADD_POSITION,
        menu=MenuId.POSITION,
        title="&Add…",
        keys="Ctrl+Shift+A",
        hint="Add a hose position to this or another dispenser.",
    ),
    ActionRecord(
        id=ActionId.DUPLICATE_POSITION,
        menu=MenuId.POSITION,
        title="&Duplicate",
        keys="Ctrl+D",
        hint="Add a position with the same answers.",
    ),
    ActionRecord(
        id=ActionId.RENAME_POSITION,
        menu=MenuId.POSITION,
        title="Re&name…",
        keys="F2",
        hint="Change the name of the position or its dispenser.",
    ),
    ActionRecord(
        id=ActionId.REMOVE_POSITION,
        menu=MenuId.POSITION,
        title="&Remove",
        keys="Ctrl+Del",
        hint="Take the position off the site. Undo brings it back.",
    ),
    ActionRecord(
        id=ActionId.COPY_ANSWERS,
        menu=MenuId.POSITION,
        title="&Copy answers to…",
        keys="Ctrl+Shift+C",
        hint="Give other positions some of the answers of this one.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.WHAT_IF,
        menu=MenuId.POSITION,
        title="&What if…",
        keys="Ctrl+Shift+W",
        hint="See what another blend, duty, outlet, rule or catalog would do to sets, checks, parts and money.",
    ),
    ActionRecord(
        id=ActionId.WEIGH,
        menu=MenuId.POSITION,
        title="W&eigh sets…",
        keys="Ctrl+Shift+E",
        hint="See every set that no other outdoes in price, lead time, flow and more, and take one of them.",
    ),
    ActionRecord(
        id=ActionId.DISPENSER_TYPES,
        menu=MenuId.POSITION,
        title="Dispenser &types…",
        keys="Ctrl+Shift+Y",
        hint="Keep the firm's types of dispensers and choose one for this dispenser, which its positions inherit.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.REPEAT_DISPENSER,
        menu=MenuId.POSITION,
        title="Repeat the d&ispenser…",
        keys="Ctrl+Shift+D",
        hint="Add dispensers with the same positions as this one.",
    ),
    ActionRecord(
        id=ActionId.MIRROR_DISPENSER,
        menu=MenuId.POSITION,
        title="&Other side of the dispenser…",
        keys="Ctrl+Shift+I",
        hint="Repeat the positions of one side on the other.",
    ),
    ActionRecord(
        id=ActionId.AGREE,
        menu=MenuId.POSITION,
        title="A&gree on these sets…",
        keys="Ctrl+Shift+G",
        hint="Agree on the planned sets of one position, several or all: papers show them from then on.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.WITHDRAW,
        menu=MenuId.POSITION,
        title="&Undo the last agreement…",
        hint="Take the last agreement back; the history keeps it, with who did so and why.",
    ),
    ActionRecord(
        id=ActionId.AGREEMENTS,
        menu=MenuId.POSITION,
        title="Agree&ments…",
        keys="Ctrl+Shift+H",
        hint="The history of agreements, two of them compared; planned, agreed and built side by side.",
    ),
    ActionRecord(
        id=ActionId.SEARCH,
        menu=MenuId.GO,
        title="&Find anything…",
        keys="Ctrl+K",
        hint="One search over commands, positions, surveys, quotations, parts and help.",
    ),
    ActionRecord(
        id=ActionId.WALK,
        menu=MenuId.GO,
        title="S&urvey, position by position",
        keys="Ctrl+1",
        hint="The questions about the position in hand, and its set.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.PREVIOUS_STEP, menu=MenuId.GO, title="&Back a step", keys="Alt+Left", hint="Go to the step before."
    ),
    ActionRecord(
        id=ActionId.NEXT_STEP, menu=MenuId.GO, title="&Next step", keys="Alt+Right", hint="Go to the step after."
    ),
    ActionRecord(
        id=ActionId.PREVIOUS_POSITION,
        menu=MenuId.GO,
        title="Position &above",
        keys="Alt+Up",
        hint="Go to the position above.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.NEXT_POSITION,
        menu=MenuId.GO,
        title="Position b&elow",
        keys="Alt+Down",
        hint="Go to the position below.",
    ),
    ActionRecord(
        id=ActionId.SITE,
        menu=MenuId.GO,
        title="&Site data",
        keys="Ctrl+I",
        hint="Name, customer, local rules, climate and service of the site.",
        starts_group=True,
    ),
    ActionRecord(
        id=ActionId.PART_QUESTION,
        menu=MenuId.GO,
        title="&Why not this part?",
        keys="Ctrl+F",
        hint="Look up any catalog part and read what speaks against it here.",
    ),
    ActionRecord(
        id=ActionId.BILL,
        menu=MenuId.GO,
        title="Parts list &of the site",
        keys="Ctrl+B",
        hint="All parts with sums, the paper to print, and files to save.",
    ),
    ActionRecord(
        id=ActionId.GRID,
        menu=MenuId.GO,
        title="All &positions in a table",
        keys="Ctrl+G",
        hint="The forecourt from above, and all answers as a table to write into.",
    ),
    ActionRecord(
        id=ActionId.QUOTATIONS,
        menu=MenuId.GO,
        title="&Quotations",
        keys="Ctrl+T",
        hint="Quote this survey, issue the quotation, note the answer, revise it.",
    ),
    ActionRecord(
        id=ActionId.CONVERSION,
        menu=MenuId.GO,
        title="&Conversion of the site",
        keys="Ctrl+E",
        hint="What stays, goes and comes, in which order, at what cost, with what effect on emissions.",
    ),
    ActionRecord(
        id=ActionId.INSTALLER,
        menu=MenuId.GO,
        title="&Installer's work",
        keys="Ctrl+J",
        hint="Papers to take along, the record of each position, replacements from the truck, inspections.",
    ),
    ActionRecord(
        id=ActionId.CATALOGUES,
        menu=MenuId.GO,
        title="Ca&talogs",
        keys="Ctrl+L",
        hint="Your own parts and prices: suppliers' tables taken over, looked at, published as editions.",
    ),
    ActionRecord(
        id=ActionId.PROGRAMME,
        menu=MenuId.GO,
        title="Pro&gram of several sites…",
        keys="Ctrl+Shift+K",
        hint="Convert a folder of surveys over all cores and rank the sites over years under a yearly budget.",
    ),
    ActionRecord(
        id=ActionId.PROFILES,
        menu=MenuId.GO,
        title="&Local rules…",
        keys="Ctrl+R",
        hint="Read the limits of a jurisdiction, or copy one and change rows.",
    ),
    ActionRecord(
        id=ActionId.UNITS_SI,
        menu=MenuId.SHOW,
        title="&Metric units",
        keys="Ctrl+Shift+M",
        checkable=True,
        hint="Meters, liters, newtons, kilopascals.",
    ),
    ActionRecord(
        id=ActionId.UNITS_US,
        menu=MenuId.SHOW,
        title="&US units",
        keys="Ctrl+Shift+U",
        checkable=True,
        hint="Feet, gallons, pounds-force, psi.",
    ),
    ActionRecord(
        id=ActionId.ENLARGE,
        menu=MenuId.SHOW,
        title="Drawing &larger",
        keys="Ctrl++",
        starts_group=True,
        hint="Enlarge the drawing.",
    ),
    ActionRecord(
        id=ActionId.REDUCE, menu=MenuId.SHOW, title="Drawing &smaller", keys="Ctrl+-", hint="Make the drawing smaller."
    ),
    ActionRecord(
        id=ActionId.FIT_DRAWING,
        menu=MenuId.SHOW,
        title="&Whole drawing",
        keys="Ctrl+0",
        hint="Show the whole drawing.",
    ),
    ActionRecord(
        id=ActionId.HELP,
        menu=MenuId.HELP,
        title="&Help",
        keys="F1",
        hint="The page of the manual that fits what has the keyboard; words of the trade; the source of every rule.",
    ),
    ActionRecord(
        id=ActionId.TOUR, menu=MenuId.HELP, title="&Three jobs in pictures", hint="How each of three people works here."
    ),
    ActionRecord(
        id=ActionId.KEYS, menu=MenuId.HELP, title="&Keys", keys="Ctrl+F1", hint="All commands with their keys."
    ),
    ActionRecord(
        id=ActionId.ABOUT, menu=MenuId.HELP, title="&About and safety", hint="What this program can and cannot say."
    ),
)


def action_record(action_id: ActionId) -> ActionRecord:
    """Return the record of a command."""
    return next(record for record in ACTIONS if record.id is action_id)
