"""Words of the pumping test on record and of the water's analysis: their checks, and the page that shows both."""

SENTENCES: dict[str, str] = {
    "page.records": "Test and quality",
    "records.under": "The pumping test on record, and the water's analysis against guideline values for drinking.",
    "records.test": "Pumping test",
    "records.no_test": "No constant-rate test is on record ([pumping_test] is not given).",
    "records.steps": "Step test",
    "records.step": "Step",
    "records.step_flow": "Flow (m3/h)",
    "records.step_drawdown": "Drawdown (m)",
    "records.step_specific": "Specific capacity (m3/h per m)",
    "records.item": "Record",
    "records.value": "Value",
    "records.quality": "Water quality",
    "records.no_quality": "The water was not analysed, or the results were not given ([water_quality]).",
    "records.not_drunk": "Nobody drinks the water, so that it is not judged as drinking-water.",
    "records.analysed": "Sample of {date}, analysed by {laboratory}.",
    "records.parameter": "Parameter",
    "records.result": "Result",
    "records.limit": "Guideline value",
    "records.kind": "Concerns",
    "records.kind_health": "health",
    "records.kind_acceptance": "taste, stains, works",
    "records.verdict": "Verdict",
    "records.source": "Source",
    "records.second_hand": "WHO 2022, at second hand",
    "records.from_memory": "WHO 2022, from memory: confirm",
    "records.not_tested": "not tested",
    "records.national": (
        "WHO 2022: Guidelines for drinking-water quality, 4th edition incorporating the first and second addenda. They "
        "are no law: the country's own standard comes first, and a result holds for its sample alone. Nothing here "
        "says that the water is safe."
    ),
    "quality.range": "{low} to {high}",
    "quality.compared": "Raw water against the guideline value for drinking-water: {name}",
    "quality.compared_nitrogen": "Nitrate over its guideline value and nitrite over its own, together",
    "quality.source": (
        "WHO, Guidelines for drinking-water quality, 4th edition with addenda, 2022, at second hand; national "
        "standards come first"
    ),
    "quality.source_from_memory": (
        "WHO, Guidelines for drinking-water quality, 4th edition with addenda, 2022, from memory: confirm it; national "
        "standards come first"
    ),
    "quality.why.health": "It harms the health of those who drink the water, some of it unnoticed for years.",
    "quality.why.acceptance": (
        "People turn from water that tastes, smells or stains to water that may be unsafe; it also fouls the works."
    ),
    "quality.remedy.health": (
        "not for drinking or cooking without treatment proven to bring it below the limit, for boiling does not take "
        "it out; sample again, ask the health authority, or find another source"
    ),
    "quality.remedy.nitrate_mg_l": (
        "not for drinking, and never for an infant's bottle, without treatment proven to bring it below the limit: "
        "boiling makes it worse; keep latrines and stock away, ask the health authority, or find another source"
    ),
    "quality.remedy.nitrite_mg_l": (
        "not for drinking, and never for an infant's bottle, without treatment proven to bring it below the limit: "
        "boiling makes it worse; ask the health authority, or find another source"
    ),
    "quality.remedy.e_coli_per_100ml": (
        "not for drinking before it is disinfected: find how it gets in (cap, seal, latrines, stock), disinfect "
        "borehole, pipes and tank, and use the water only when new samples are clear; ask the health authority"
    ),
    "quality.remedy.acceptance": "sample again, and ask users and the health authority whether it needs treatment",
    "check.quality_e_coli_per_100ml.what": "E. coli or thermotolerant coliforms",
    "check.quality_arsenic_mg_l.what": "arsenic",
    "check.quality_fluoride_mg_l.what": "fluoride",
    "check.quality_nitrate_mg_l.what": "nitrate, as NO3",
    "check.quality_nitrite_mg_l.what": "nitrite, as NO2",
    "check.quality_manganese_mg_l.what": "manganese",
    "check.quality_lead_mg_l.what": "lead",
    "check.quality_uranium_mg_l.what": "uranium",
    "check.quality_boron_mg_l.what": "boron",
    "check.quality_chromium_mg_l.what": "chromium",
    "check.quality_cadmium_mg_l.what": "cadmium",
    "check.quality_iron_mg_l.what": "iron",
    "check.quality_chloride_mg_l.what": "chloride",
    "check.quality_sulfate_mg_l.what": "sulfate",
    "check.quality_sodium_mg_l.what": "sodium",
    "check.quality_hardness_mg_l.what": "total hardness, as CaCO3",
    "check.quality_dissolved_solids_mg_l.what": "total dissolved solids",
    "check.quality_turbidity_ntu.what": "turbidity",
    "check.quality_ph.what": "pH",
    "check.quality_nitrate_and_nitrite.what": "nitrate and nitrite together",
    "check.water_analysis.what": "analysis of the water",
    "check.water_analysis.compared": "The water's analysis",
    "check.water_analysis.compared_in_part": "The rest of the water's analysis",
    "check.water_analysis.why": (
        "Clear water can hold what makes people ill; nobody can taste germs, arsenic or fluoride."
    ),
    "check.water_analysis.look_for": (
        "not tested: {names}; have a laboratory take and analyse a sample before anyone drinks the water or pays for "
        "the works"
    ),
    "check.water_analysis.source": "a least list proposed here, no standard; limits of WHO, 2022",
    "check.pumping_test.what": "pumping test",
    "check.yield_of_test.what": "safe yield against the test",
    "check.recovery.what": "recovery after the test",
    "check.pumping_test.compared": "Length of the constant-rate pumping test",
    "check.pumping_test.compared_not": "The record of a constant-rate pumping test",
    "check.pumping_test.why": (
        "A short test shows the water stored beside the borehole, not what flows to it through a dry season."
    ),
    "check.pumping_test.look_for": (
        "ask driller or water office for the record of a test at a steady flow of {hours} hours or more, with the "
        "recovery after it"
    ),
    "check.pumping_test.remedy": "test at a steady flow for {hours} hours or more, and watch the recovery",
    "check.pumping_test.source": (
        "24 hours: design manual of the Ministry of Water of Tanzania; 24 to 72 hours: SANS 10299-4:2003; both at "
        "second hand"
    ),
    "check.yield_of_test.compared": "Safe yield, as a share of the {flow} m3/h that the test held",
    "check.yield_of_test.why": "What a borehole bears for days in one season it may not bear for years.",
    "check.yield_of_test.remedy": (
        "plan on at most {flow} m3/h, or have a hydrogeologist derive the yield from test and recovery"
    ),
    "check.yield_of_test.source": "60 to 70 % is common practice, from memory, no source",
    "check.recovery.compared": "How far below its rest the water still stood when the recovery ended",
    "check.recovery.why": "Water that does not come back was taken from what the rock stores, and will not last.",
    "check.recovery.remedy": (
        "watch the recovery longer; if the water stays down, plan on less and have a hydrogeologist judge the source"
    ),
    "check.recovery.source": "practice after SANS 10299-4:2003, at second hand",
}
