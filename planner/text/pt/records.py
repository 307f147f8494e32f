"""Português do ensaio de bombagem e da análise da água: as suas verificações, e a página que mostra ambos."""

SENTENCES: dict[str, str] = {
    "page.records": "Ensaio e qualidade",
    "records.under": "O ensaio de bombagem registado, e a análise da água face aos valores-guia para beber.",
    "records.test": "Ensaio de bombagem",
    "records.no_test": "Não há nenhum ensaio a caudal constante registado ([pumping_test] não está indicado).",
    "records.steps": "Ensaio escalonado",
    "records.step": "Escalão",
    "records.step_flow": "Caudal (m3/h)",
    "records.step_drawdown": "Rebaixamento (m)",
    "records.step_specific": "Caudal específico (m3/h por m)",
    "records.item": "Registo",
    "records.value": "Valor",
    "records.quality": "Qualidade da água",
    "records.no_quality": "A água não foi analisada, ou os resultados não foram indicados ([water_quality]).",
    "records.not_drunk": "Ninguém bebe a água, pelo que não é julgada como água para beber.",
    "records.analysed": "Amostra de {date}, analisada por {laboratory}.",
    "records.parameter": "Parâmetro",
    "records.result": "Resultado",
    "records.limit": "Valor-guia",
    "records.kind": "Diz respeito a",
    "records.kind_health": "saúde",
    "records.kind_acceptance": "sabor, manchas, obras",
    "records.verdict": "Resultado da verificação",
    "records.source": "Fonte",
    "records.second_hand": "OMS 2022, em segunda mão",
    "records.from_memory": "OMS 2022, de memória: confirme",
    "records.not_tested": "não analisado",
    "records.national": (
        "OMS 2022: Guidelines for drinking-water quality, 4.ª edição com a primeira e a segunda adendas. Não são "
        "lei: a norma do próprio país está em primeiro lugar, e um resultado vale só para a sua amostra. Nada aqui "
        "diz que a água é segura."
    ),
    "quality.range": "{low} a {high}",
    "quality.compared": "Água bruta face ao valor-guia para água de beber: {name}",
    "quality.compared_nitrogen": "Nitrato sobre o seu valor-guia e nitrito sobre o seu, em conjunto",
    "quality.source": (
        "OMS, Guidelines for drinking-water quality, 4.ª edição com adendas, 2022, em segunda mão; as normas "
        "nacionais estão em primeiro lugar"
    ),
    "quality.source_from_memory": (
        "OMS, Guidelines for drinking-water quality, 4.ª edição com adendas, 2022, de memória: confirme-o; as normas "
        "nacionais estão em primeiro lugar"
    ),
    "quality.why.health": "Faz mal à saúde de quem bebe a água, em parte sem se notar durante anos.",
    "quality.why.acceptance": (
        "As pessoas trocam a água que sabe mal, cheira ou mancha por água que pode ser insegura; também suja as obras."
    ),
    "quality.remedy.health": (
        "não usar para beber nem cozinhar sem um tratamento de que se provou que a traz abaixo do limite, porque "
        "ferver não o retira; colha nova amostra, pergunte à autoridade de saúde, ou procure outra origem"
    ),
    "quality.remedy.nitrate_mg_l": (
        "não usar para beber, e nunca para o biberão de um bebé, sem um tratamento de que se provou que a traz "
        "abaixo do limite: ferver piora; mantenha latrinas e gado afastados, pergunte à autoridade de saúde, ou "
        "procure outra origem"
    ),
    "quality.remedy.nitrite_mg_l": (
        "não usar para beber, e nunca para o biberão de um bebé, sem um tratamento de que se provou que a traz "
        "abaixo do limite: ferver piora; pergunte à autoridade de saúde, ou procure outra origem"
    ),
    "quality.remedy.e_coli_per_100ml": (
        "não usar para beber antes de desinfectada: descubra por onde entra (tampa, selo, latrinas, gado), "
        "desinfecte furo, tubagens e reservatório, e use a água só quando novas amostras estiverem limpas; pergunte "
        "à autoridade de saúde"
    ),
    "quality.remedy.acceptance": (
        "colha nova amostra, e pergunte aos utilizadores e à autoridade de saúde se precisa de tratamento"
    ),
    "check.quality_e_coli_per_100ml.what": "E. coli ou coliformes termotolerantes",
    "check.quality_arsenic_mg_l.what": "arsénio",
    "check.quality_fluoride_mg_l.what": "fluoreto",
    "check.quality_nitrate_mg_l.what": "nitrato, em NO3",
    "check.quality_nitrite_mg_l.what": "nitrito, em NO2",
    "check.quality_manganese_mg_l.what": "manganês",
    "check.quality_lead_mg_l.what": "chumbo",
    "check.quality_uranium_mg_l.what": "urânio",
    "check.quality_boron_mg_l.what": "boro",
    "check.quality_chromium_mg_l.what": "crómio",
    "check.quality_cadmium_mg_l.what": "cádmio",
    "check.quality_iron_mg_l.what": "ferro",
    "check.quality_chloride_mg_l.what": "cloreto",
    "check.quality_sulfate_mg_l.what": "sulfato",
    "check.quality_sodium_mg_l.what": "sódio",
    "check.quality_hardness_mg_l.what": "dureza total, em CaCO3",
    "check.quality_dissolved_solids_mg_l.what": "sólidos dissolvidos totais",
    "check.quality_turbidity_ntu.what": "turvação",
    "check.quality_ph.what": "pH",
    "check.quality_nitrate_and_nitrite.what": "nitrato e nitrito em conjunto",
    "check.water_analysis.what": "análise da água",
    "check.water_analysis.compared": "A análise da água",
    "check.water_analysis.compared_in_part": "O resto da análise da água",
    "check.water_analysis.why": (
        "Água límpida pode conter o que põe as pessoas doentes; ninguém sente o sabor de germes, arsénio ou fluoreto."
    ),
    "check.water_analysis.look_for": (
        "não analisado: {names}; mande um laboratório colher e analisar uma amostra antes de alguém beber a água ou "
        "pagar as obras"
    ),
    "check.water_analysis.source": "uma lista mínima aqui proposta, sem norma; limites da OMS, 2022",
    "check.pumping_test.what": "ensaio de bombagem",
    "check.yield_of_test.what": "caudal seguro de exploração face ao ensaio",
    "check.recovery.what": "recuperação depois do ensaio",
    "check.pumping_test.compared": "Duração do ensaio de bombagem a caudal constante",
    "check.pumping_test.compared_not": "O registo de um ensaio de bombagem a caudal constante",
    "check.pumping_test.why": (
        "Um ensaio curto mostra a água armazenada junto ao furo, não a que aflui a ele durante uma estação seca."
    ),
    "check.pumping_test.look_for": (
        "peça ao perfurador ou aos serviços de águas o registo de um ensaio a caudal constante de {hours} horas ou "
        "mais, com a recuperação a seguir"
    ),
    "check.pumping_test.remedy": "ensaie a caudal constante durante {hours} horas ou mais, e observe a recuperação",
    "check.pumping_test.source": (
        "24 horas: manual de projecto do Ministério da Água da Tanzânia; 24 a 72 horas: SANS 10299-4:2003; ambos em "
        "segunda mão"
    ),
    "check.yield_of_test.compared": "Caudal seguro de exploração, como parte dos {flow} m3/h que o ensaio manteve",
    "check.yield_of_test.why": "O que um furo aguenta durante dias numa estação pode não aguentar durante anos.",
    "check.yield_of_test.remedy": (
        "conte com no máximo {flow} m3/h, ou mande um hidrogeólogo deduzir o caudal do ensaio e da recuperação"
    ),
    "check.yield_of_test.source": "60 a 70% é prática corrente, de memória, sem fonte",
    "check.recovery.compared": "Quanto a água estava ainda abaixo do seu repouso quando a recuperação acabou",
    "check.recovery.why": "Água que não volta foi tirada do que a rocha armazena, e não durará.",
    "check.recovery.remedy": (
        "observe a recuperação mais tempo; se a água ficar em baixo, conte com menos e mande um hidrogeólogo avaliar "
        "a origem"
    ),
    "check.recovery.source": "prática segundo a SANS 10299-4:2003, em segunda mão",
}
