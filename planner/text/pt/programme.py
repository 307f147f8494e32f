"""Português de vários locais de um programa lado a lado, e do que fazem em conjunto."""

SENTENCES: dict[str, str] = {
    "programme.heading": "Locais lado a lado, em cada um a opção classificada em primeiro",
    "programme.site": "Local",
    "programme.incomplete": "{mark} incompleto: alguma coisa não tem preço; também falta nas somas de todos os locais",
    "programme.priced": (
        "Os {count} locais em conjunto: custo de investimento {capital_cost}, custo do ciclo de vida (valor actual) "
        "{life_cycle_cost}, {water:,.1f} m3 de água por dia."
    ),
    "programme.granted": "As subvenções pagam {grant} do custo de investimento.",
    "programme.per_person": "Servem {people:,.0f} pessoas no primeiro ano, a um custo de investimento de {cost} cada.",
    "programme.per_person_granted": (
        "Servem {people:,.0f} pessoas no primeiro ano, a um custo de investimento de {cost} cada, do qual as "
        "subvenções pagam {grant}."
    ),
    "programme.technical": "Os {count} locais em conjunto: {water:,.1f} m3 de água por dia.",
    "programme.open": (
        "Não construir tal como estão, porque o objectivo é falhado ou uma verificação não é cumprida: {sites}."
    ),
    "programme.all_hold": (
        "Em cada local a opção classificada em primeiro cumpre o objectivo e passa nas suas verificações."
    ),
}
