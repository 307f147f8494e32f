"""Português do método, dos seus limites e das suas palavras."""

SENTENCES: dict[str, str] = {
    "method.under": "Calculado pelo planner {version!s}, semente {seed}.",
    "method.cautions": "Advertências",
    "method.caution": "! Advertência {number}",
    "method.method": "Método",
    "method.limits": "Limites do modelo",
    "method.words": "Palavras",
    "method.weather": "Meteorologia",
    "method.weather_file": (
        "Ficheiro horário: {source}. Onde não tem irradiância directa e difusa próprias, a global é repartida "
        "segundo Erbs, Klein e Duffie (1982)."
    ),
    "method.weather_means": (
        "Horas feitas a partir de doze médias mensais, de novo para cada ano: limpidez diária segundo {law}; horas "
        "segundo Graham e Hollands (1990) e Knight, Klein e Duffie (1991), directa e difusa segundo Erbs, Klein e "
        "Duffie (1982), temperatura segundo Erbs, Klein e Beckman (1983). As somas dos meses mantêm-se."
    ),
    "method.array": "Campo fotovoltaico",
    "method.array_words": (
        "Irradiância nos módulos segundo {sky}; reflexão em {reflection} segundo De Soto, Klein e Beckman (2006) e "
        "Marion (2017); temperatura das células segundo Faiman (2008), potência de um módulo a qualquer irradiância "
        "e temperatura segundo Batzelis (2017) a partir da sua ficha técnica, e a equação de um díodo de De Soto "
        "onde a janela de tensão do controlador o mantém fora do seu melhor ponto; tudo como na pvlib. Sombra, "
        "sujidade, dispersão, cablagem, degradação pela luz e degradação anual são descontadas como indicado."
    ),
    "sky.perez-driesse": "Perez et al. (1990), na forma contínua de Driesse, Jensen e Perez (2024)",
    "sky.haydavies": "Hay e Davies (1980)",
    "reflection.glass": "vidro simples",
    "reflection.coated_glass": "vidro com revestimento",
    "reflection.none": "nenhum vidro (não considerada)",
    "method.borehole": "Furo e tubagens",
    "method.borehole_words": (
        "Rebaixamento s = B Q + C Q2 (Jacob 1947), de um caudal específico ou de um ensaio escalonado. Perdas de "
        "carga segundo {friction}, perdas nos acessórios pelos seus coeficientes K. Diâmetros interiores do tubo de "
        "PE da ISO 4427-2, do tubo de aço da EN 10255."
    ),
    "friction.darcy-weisbach": "Darcy-Weisbach com Colebrook-White (Colebrook 1939)",
    "friction.hazen-williams": "Hazen-Williams",
    "method.pump": "Bomba",
    "pump.centrifugal": "Leis de semelhança em torno da curva à velocidade nominal.",
    "pump.helical-rotor": (
        "Deslocamento positivo: caudal proporcional à velocidade menos o deslizamento; o binário acompanha a altura."
    ),
    "method.loop": "Ciclo horário",
    "method.loop_words": (
        "Em cada hora de cada ano: o sol bombeia primeiro; rede e gerador reforçam entre o nível de arranque e o de "
        "paragem, nas suas horas e cortes; os utilizadores consomem do reservatório. As fontes podem partilhar uma "
        "hora onde o controlador as faz funcionar em paralelo. Nada se cria nem se perde: o que é bombeado é igual "
        "ao que é fornecido, perdido em fugas e armazenado."
    ),
    "method.generator": "Gerador",
    "method.generator_words": (
        "Combustível = parte em vazio x potência nominal x horas + parte adicional x energia (Skarstein e Uhlen "
        "1989, de memória); potência nominal reduzida pela altitude e pelo calor; revisões, grandes reparações e "
        "substituição por horas de funcionamento."
    ),
    "method.sizes": "Escolha dos tamanhos",
    "method.sizes_words": (
        "Onde ficam em aberto: o menor reservatório que cumpre o objectivo de serviço, e o número de fileiras e os "
        "níveis do interruptor de bóia de menor custo do ciclo de vida que o cumprem. As opções que cumprem o "
        "objectivo são ordenadas pelo custo do ciclo de vida; as que o falham vêm depois, pelo que fornecem."
    ),
    "method.money": "Dinheiro",
    "method.money_words": (
        "Custo do ciclo de vida como em 10 CFR 436 e no NIST Handbook 135 (Fuller e Petersen 1995): custo de "
        "investimento no ano 0, tudo o resto no fim dos anos; substituição no fim de cada vida; valor residual "
        "linear. Custo nivelado da água como custo económico incremental médio (ADB, Handbook for the Economic "
        "Analysis of Water Supply Projects, 1999). Taxas reais e nominais segundo Fisher."
    ),
    "limit.hours": (
        "Horas, não minutos: dentro de uma hora o balanço da água é resolvido, mas uma nuvem que passa não é vista."
    ),
    "limit.start": (
        "Cada ano começa com o que o ano anterior deixa no reservatório; o primeiro começa tão cheio como acaba."
    ),
    "limit.weather": "Um único ficheiro meteorológico repete-se todos os anos; só médias mensais dão anos que diferem.",
    "limit.nameplate": (
        "Só com a placa de características, a potência em carga parcial é um pressuposto; pontos da ficha técnica "
        "são melhores."
    ),
    "limit.ageing": "As obras envelhecem por igual, pelas descidas anuais dos dados; um furo nunca é limpo.",
    "limit.not_run": "Golpe de aríete, qualidade da água e roturas não fazem parte do cálculo horário.",
    "limit_of_money.flows": (
        "Os custos caem no fim dos anos, as prestações do empréstimo são constantes, os impostos sobre o rendimento "
        "ficam de fora."
    ),
    "limit.carbon": "O dióxido de carbono de fabricar e transportar o equipamento não é contado.",
    "limit.inspection": (
        "O programa calcula; não inspecciona: um ensaio de bombagem, um levantamento do traçado e cotações vêm "
        "primeiro."
    ),
    "word.source": "fonte",
    "meaning.source": "Solar, rede ou gerador.",
    "word.option": "opção de alimentação",
    "meaning.option": "Uma combinação de fontes que serve as mesmas necessidades, como solar + rede.",
    "word.top_up": "reforço",
    "meaning.top_up": "Bombear com a rede ou o gerador porque o sol e o reservatório não bastam.",
    "word.levels": "nível de arranque, nível de paragem",
    "meaning.levels": "Níveis do reservatório em que o reforço arranca e pára: o interruptor de bóia.",
    "word.demand_met": "necessidades cobertas, défice",
    "meaning.demand_met": "Água fornecida em relação à água pedida; o défice é o que é pedido e não fornecido.",
    "word.pv_unused": "energia fotovoltaica não usada",
    "meaning.pv_unused": (
        "Energia fotovoltaica disponível mas não usada (cortada): reservatório cheio, abaixo da potência de "
        "arranque, ou acima do que a bomba absorve."
    ),
    "word.static_lift": "altura geométrica",
    "meaning.static_lift": "Do nível estático no furo até à entrada do reservatório.",
    "word.head": "altura manométrica total",
    "meaning.head": "Altura geométrica + rebaixamento + perdas de carga + pressão residual.",
    "word.duty_point": "ponto de funcionamento",
    "meaning.duty_point": "Caudal e altura em que a bomba e a instalação se encontram.",
    "word_of_money.life_cycle_cost": "custo do ciclo de vida",
    "meaning.life_cycle_cost": "Valor actual de todos os custos no período de análise, menos o valor residual.",
    "word_of_money.net_present_value": "valor actual líquido",
    "meaning.net_present_value": "Valor actual do que os utilizadores pagam, menos o custo do ciclo de vida.",
    "word_of_money.annualised_cost": "custo anualizado",
    "meaning.annualised_cost": "Soma anual constante cujo valor actual é o custo do ciclo de vida.",
    "word_of_money.levelised_cost": "custo nivelado da água",
    "meaning.levelised_cost": "Custo do ciclo de vida / valor actual dos m3 fornecidos, em dinheiro do ano 0.",
    "word_of_money.rate": "taxa interna de rentabilidade",
    "meaning.rate": "Taxa a que o investimento adicional face à referência iguala as poupanças posteriores.",
    "word_of_money.payback": "período de retorno",
    "meaning.payback": "Anos até o investimento adicional ser recuperado e assim ficar; actualizado ou não.",
    "word_of_money.residual_value": "valor residual",
    "meaning.residual_value": "O que o equipamento vale no fim: o seu preço vezes a parte da sua vida que resta.",
}
