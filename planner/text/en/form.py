"""English of the fill-in form: its sheets, headings, notes, and what a cell takes."""

SENTENCES: dict[str, str] = {
    # sheets
    "form.sheet.project": "Project",
    "form.sheet.place": "Place and weather",
    "form.sheet.demand": "People and demand",
    "form.sheet.borehole": "Borehole",
    "form.sheet.pipe": "Pipe",
    "form.sheet.pump": "Pump plate",
    "form.sheet.solar": "Panels",
    "form.sheet.grid": "Grid",
    "form.sheet.generator": "Generator",
    "form.sheet.cables": "Cables",
    "form.sheet.tank": "Tank",
    "form.sheet.costs": "Costs and finance",
    "form.sheet.options": "Options",
    "form.sheet.studies": "Studies",
    # sections that are not called by their description or key
    "form.section.": "Project",
    "form.section.site": "Place",
    "form.section.topup": "Float switch",
    "form.section.sources.solar": "Solar array",
    "form.section.sources.solar.module": "PV module",
    "form.section.sources.generator": "Generator",
    "form.section.sources.grid": "Grid connection",
    "form.section.sources.grid.outages": "Random outages of the grid",
    "form.section.sources.grid.tariff": "Tariff of the grid",
    "form.section.pump.plate": "Rest of the pump's nameplate",
    "form.section.service": "Service wanted and options compared",
    "form.section.cables": "Cables",
    "form.section.size": "Candidates for the search of sizes",
    "form.section.sweep": "Uncertain inputs",
    "form.section.overrides": "Overrides",
    # headings
    "form.column.what": "What",
    "form.column.value": "Your value",
    "form.column.unit": "Unit",
    "form.column.allowed": "Allowed",
    "form.column.example": "Example",
    "form.column.notes": "Notes",
    "form.by_month": "By month",
    "form.table_by_month": "{title}; by month: {months}",
    "form.labelled": "{label} [{unit}]",
    "form.kind": "Kind of {what}",
    "form.kind_of_entry": "Kind of entry",
    "form.table_of_kind": "{title}: {kind}",
    "form.place_in_list": "Place in the list",
    "form.place_may_stay_empty": "Place in the list; may stay empty",
    "form.described": "Described, though every cell below is left empty",
    "form.overrides": "Values that hold for one supply option only",
    "form.override_option": "Supply option, such as solar + grid",
    "form.override_key": "Key, as in the key column, such as tank.volume_m3",
    "form.override_value": "Value; lists and tables as in TOML",
    "form.page": "Page {page} of {pages}",
    # how it is filled in
    "form.how_to.frames": (
        "Fill in the framed cells. Thick frame and darker ground: must be given. Thin frame: may stay empty; the notes "
        "say what then holds."
    ),
    "form.how_to.sources": (
        "A supply that the site does not have (sun, grid, generator): leave its whole sheet empty. One filled cell "
        "counts as a description."
    ),
    "form.how_to.numbers": (
        "Type plain numbers without units: 15 for 15 %. No formulas: they are refused, not computed. Lists in one cell "
        "are separated by ; with decimal points."
    ),
    "form.how_to.rows": (
        "Rows may be inserted in tables; do not change the grey keys at the far right, by which the form is read. "
        "Examples are invented."
    ),
    "form.how_to.safety": (
        "Open boreholes, tanks, pressure and live wiring can kill: let trained people take the readings, with power "
        "off and locked, under local rules."
    ),
    # notes beside a cell
    "form.must_be_given": "must be given",
    "form.left_empty": "left empty: {meaning}",
    "form.left_empty_not_described": "left empty: described only where a cell below is filled",
    "form.only_for_kind": "only for the kind {kind}; {notes}",
    "form.default_with_source": "{value} ({source})",
    "form.no_default": "none",
    "form.leave_section_empty": "{notes} Leave it empty as a whole where there is none.",
    "form.not_allowed": "Not allowed here",
    "form.allowed": "Allowed: {allowed}",
    # what a cell takes, in full
    "form.takes.either": "{first}, or {second}",
    "form.takes.or": "{first} or {last}",
    "form.takes.parts_of_day": "parts of the day in hours, such as {example}",
    "form.takes.pairs": "{pairs}, such as {example}",
    "form.takes.pairs_of_numbers": "pairs of numbers",
    "form.takes.texts_of": "one or more of {choices}, separated by ;",
    "form.takes.texts": "texts separated by ;",
    "form.takes.list": "{numbers}, separated by ;",
    "form.takes.numbers": "numbers",
    "form.takes.whole_numbers": "whole numbers",
    "form.takes.count_of_numbers": "{count} {numbers}",
    "form.takes.number": "a number",
    "form.takes.whole_number": "a whole number",
    "form.takes.twelve_numbers": "twelve numbers",
    "form.takes.as_its_key": "as its key",
    "form.takes.text": "text",
    "form.takes.toml": "a list or table as in TOML, such as [{{ key = 1 }}] or {{ key = 1 }}",
    "form.takes.within": "{what} {limits}",
    # limits of a number
    "form.limits.ge_le": "{ge} to {le}",
    "form.limits.gt": "above {limit}",
    "form.limits.ge": "from {limit}",
    "form.limits.lt": "below {limit}",
    "form.limits.le": "up to {limit}",
    # what a cell takes, in a narrow column
    "form.takes_short.list_or": "list, or {other}",
    "form.takes_short.toml": "as in TOML",
    "form.takes_short.months": "12 numbers",
    "form.takes_short.count": "{count} with ;",
    "form.takes_short.numbers": "numbers with ;",
    "form.takes_short.texts": "texts with ;",
    "form.takes_short.number_or_text": "number or text",
    "form.takes_short.whole": "whole {limits}",
    "form.takes_short.any_number": "any number",
}
