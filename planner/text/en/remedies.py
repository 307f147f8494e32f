"""Words of remedies carried out: the file that they are written to, and what they cost and come to."""

SENTENCES: dict[str, str] = {
    # the file
    "apply.note": "remedy: {what}",
    "apply.note_was": "remedy: {what}, was {before}",
    "apply.note_path": "from the folder of this file",
    "apply.heading": "Remedies carried out",
    "apply.none": "No check fails: there is nothing to carry out.",
    "apply.none_computed": "None of the remedies can be computed.",
    "apply.one": "For {topic}, {what}: {remedy}",
    "apply.left": "Left to do, as it cannot be computed, for {topic}, {what}: {remedy}",
    "apply.comments_lost": "Comments and order of the file could not be kept.",
    "apply.nothing_installed": (
        "The file says what is to be built or bought; what a remedy does not cover, and every figure of it, is for "
        "licensed practice to confirm."
    ),
    "apply.wrote_clean": "Wrote {file}: no check fails.",
    "apply.wrote_one_fails": "Wrote {file}: one check still fails.",
    "apply.wrote_fail": "Wrote {file}: {count} checks still fail.",
    # what is changed, in a few words inside a sentence
    "remedied.cables.dc.section_mm2": "array cable of {value:g} mm2",
    "remedied.cables.ac.section_mm2": "AC cable of {value:g} mm2",
    "remedied.cables.drop.section_mm2": "drop cable of {value:g} mm2",
    "remedied.cables.ac.protective_device_a": "protective device of {value:g} A for the AC cable",
    "remedied.cables.drop.protective_device_a": "protective device of {value:g} A for the drop cable",
    "remedied.cables.dc.voltage_class_v": "array cable made for {value:g} V DC",
    "remedied.cables.dc.outdoor": "array cable made for sun and weather",
    "remedied.cables.drop.length_m": "drop cable of {value:g} m",
    "remedied.sources.grid.power_limit_w": "grid connection for {value:g} W",
    "remedied.sources.generator.rating_kw": "generator of {value:g} kW",
    "remedied.sources.solar.modules_in_series": "{value:g} modules in series",
    "remedied.sources.solar.strings": "{value:g} string(s)",
    "remedied.sources.solar.string_fuse_a": "string fuses of {value:g} A",
    "remedied.controller.power_limit_w": "controller for {value:g} W",
    "remedied.pipeline.segments.pipe": "pipe {value}",
    "remedied.pipeline.riser_pipe": "rising pipe {value}",
    "remedied.pipeline.pipe": "main of {value}",
    "remedied.pipeline.stop_time_s": "stop of the pump in {value:g} s",
    "remedied.pipeline.profile.air_valve": "air valves at the high points",
    "remedied.borehole.pump_depth_m": "pump at {value:g} m",
    "remedied.borehole.flow_sleeve_diameter_mm": "flow sleeve of {value:g} mm",
    "remedied.tank.volume_m3": "tank of {value:g} m3",
    "remedied.tank.outlet_height_m": "outlet of the tank at {value:g} m",
    # what they come to
    "remedied.answer": "With the remedies ({remedies}) {option} meets {met:.1f} % of the water, and {checks}.",
    "remedied.answer_priced": (
        "With the remedies ({remedies}) {option} costs {cost}, meets {met:.1f} % of the water, and {checks}."
    ),
    "remedied.more": "{gap} more over the analysis period",
    "remedied.more_than": "{gap} more over the analysis period than {before} without them",
    "remedied.less": "{gap} less over the analysis period",
    "remedied.less_than": "{gap} less over the analysis period than {before} without them",
    "remedied.same": "the same over the analysis period",
    "remedied.same_as": "the same over the analysis period as {before} without them",
    "remedied.short": "The target of {target:g} % is then not met.",
    "remedied.no_check_fails": "no check fails",
    "remedied.one_fails": "one check still fails ({checks})",
    "remedied.some_fail": "{count} checks still fail ({checks})",
    "remedied.not_priced": "Costs count the prices entered; what is dearer than those, or has none, adds to them: {items}.",
    "remedied.none_computed": (
        "The remedies of what fails cannot be computed, so what they cost is not known: {checks}."
    ),
}
