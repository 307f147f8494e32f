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
    "remedy_item.cables_dc_section_mm2": "array cable of {value:g} mm2",
    "remedy_item.cables_ac_section_mm2": "AC cable of {value:g} mm2",
    "remedy_item.cables_drop_section_mm2": "drop cable of {value:g} mm2",
    "remedy_item.cables_ac_protective_device_a": "protective device of {value:g} A for the AC cable",
    "remedy_item.cables_drop_protective_device_a": "protective device of {value:g} A for the drop cable",
    "remedy_item.cables_dc_voltage_class_v": "array cable made for {value:g} V DC",
    "remedy_item.cables_dc_outdoor": "array cable made for sun and weather",
    "remedy_item.cables_drop_length_m": "drop cable of {value:g} m",
    "remedy_item.sources_grid_power_limit_w": "grid connection for {value:g} W",
    "remedy_item.sources_generator_rating_kw": "generator of {value:g} kW",
    "remedy_item.sources_solar_modules_in_series": "{value:g} modules in series",
    "remedy_item.sources_solar_strings": "{value:g} string(s)",
    "remedy_item.sources_solar_strings_max": "at most {value:g} string(s)",
    "remedy_item.sources_solar_string_fuse_a": "string fuses of {value:g} A",
    "remedy_item.controller_power_limit_w": "controller for {value:g} W",
    "remedy_item.pipeline_segments_pipe": "pipe {value}",
    "remedy_item.pipeline_riser_pipe": "rising pipe {value}",
    "remedy_item.pipeline_pipe": "main of {value}",
    "remedy_item.pipeline_stop_time_s": "stop of the pump in {value:g} s",
    "remedy_item.pipeline_profile_air_valve": "air valves at the high points",
    "remedy_item.borehole_pump_depth_m": "pump at {value:g} m",
    "remedy_item.borehole_flow_sleeve_diameter_mm": "flow sleeve of {value:g} mm",
    "remedy_item.tank_volume_m3": "tank of {value:g} m3",
    "remedy_item.tank_outlet_height_m": "outlet of the tank at {value:g} m",
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
    "remedied.not_priced": (
        "Costs count the prices entered; what has none, or is dearer than the one entered, adds to them: {items}."
    ),
    "remedied.none_computed": (
        "The remedies of what fails cannot be computed, so what they cost is not known: {checks}."
    ),
}
