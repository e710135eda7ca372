using LogBook.Domain.Languages;

namespace LogBook.Entry.Cautions;

/// <summary>
/// Wording of the cautions. They remind at the moment of the act and defer to the site's plan, labels, permits and licensed
/// people; they are no instruction for the work itself.
/// </summary>
public static class CautionTexts
{
    /// <summary>The text of a caution.</summary>
    /// <param name="caution">The caution.</param>
    /// <returns>The wording.</returns>
    public static Text Of(Caution caution) => caution switch
    {
        Caution.Switches => new(
            "This may start a pump or open a valve at once. Nobody at the equipment? Lines connected? Put it back to automatic before you leave.",
            "Esto puede arrancar una bomba o abrir una válvula de inmediato. ¿Nadie junto al equipo? ¿Líneas conectadas? Vuelva a ponerlo en automático antes de irse.",
            "Isto pode ligar uma bomba ou abrir uma válvula na hora. Ninguém junto ao equipamento? Linhas conectadas? Volte ao automático antes de sair."),
        Caution.LevelSwitch => new(
            "Refilling a drum with a level switch: the pump may start by itself when the switch is made.",
            "Al rellenar un bidón con interruptor de nivel, la bomba puede arrancar sola cuando el interruptor conecte.",
            "Ao reabastecer uma bombona com chave de nível, a bomba pode ligar sozinha quando a chave fechar."),
        Caution.OpenedLine => new(
            "Before opening a pump, valve or injection point, or taking out a probe: isolate and lock out as the site requires, and release the pressure.",
            "Antes de abrir una bomba, una válvula o un punto de inyección, o de sacar una sonda: aísle y bloquee como exige el sitio y libere la presión.",
            "Antes de abrir uma bomba, válvula ou ponto de injeção, ou de retirar uma sonda: isole e bloqueie como o local exige e alivie a pressão."),
        Caution.AcidAndHypochlorite => new(
            "Acid and hypochlorite or another oxidant are on this site. Never together: separate tanks, hoses and fill points. Feeds must stop when flow stops.",
            "En este sitio hay ácido e hipoclorito u otro oxidante. Nunca juntos: depósitos, mangueras y bocas de llenado separados. La dosificación debe parar cuando para el caudal.",
            "Neste local há ácido e hipoclorito ou outro oxidante. Nunca juntos: tanques, mangueiras e bocais separados. A dosagem deve parar quando o fluxo para."),
        Caution.UnlikeProducts => new(
            "Non-oxidising product and oxidant are on this site. Keep a non-oxidising, quaternary or ammonia product apart from hypochlorite or bromine in time and place, as the labels say.",
            "En este sitio hay producto no oxidante y oxidante. Mantenga un producto no oxidante, cuaternario o de amonio separado del hipoclorito o del bromo en tiempo y lugar, como dicen las etiquetas.",
            "Neste local há produto não oxidante e oxidante. Mantenha um produto não oxidante, quaternário ou de amônia separado do hipoclorito ou do bromo no tempo e no lugar, como dizem os rótulos."),
        Caution.OtherProduct => new(
            "Not the product this drum is for. Stop: nothing is filled, connected or dosed until label and tank match, or the person responsible has decided.",
            "No es el producto de este bidón. Deténgase: no se rellena, conecta ni dosifica nada hasta que etiqueta y depósito coincidan o decida la persona responsable.",
            "Não é o produto desta bombona. Pare: nada se enche, conecta nem dosa até que rótulo e tanque coincidam ou a pessoa responsável decida."),
        Caution.SolidOxidiser => new(
            "Only the product named on this feeder. Different solid oxidisers can burn or explode when mixed; opening a feeder can release gas.",
            "Solo el producto indicado en este dosificador. Oxidantes sólidos distintos pueden arder o explotar si se mezclan; abrir el dosificador puede liberar gas.",
            "Só o produto indicado neste dosador. Oxidantes sólidos diferentes podem queimar ou explodir se misturados; abrir o dosador pode liberar gás."),
        Caution.NoFlow => new(
            "No flow while something feeds: chemical collects in the pipe and arrives at once at restart.",
            "Sin caudal mientras algo dosifica: el producto se acumula en la tubería y llega de golpe al volver a arrancar.",
            "Sem fluxo enquanto algo dosa: o produto se acumula na tubulação e chega de uma vez ao religar."),
        Caution.Delivery => new(
            "Delivery: read the label, match the tank, ask for a second pair of eyes, scan.",
            "Entrega: lea la etiqueta, compruebe el depósito, pida que otra persona lo mire, escanee.",
            "Entrega: leia o rótulo, confira o tanque, peça que outra pessoa olhe, escaneie."),
        Caution.Biocide => new(
            "Biocide: the label is the limit. Where the law asks for a certified applicator or a supervised apprentice, others stop here. Keep unlike products apart in time and place as the labels say.",
            "Biocida: la etiqueta es el límite. Donde la ley exige un aplicador certificado o un aprendiz supervisado, los demás se detienen aquí. Mantenga separados en tiempo y lugar los productos distintos, como dicen las etiquetas.",
            "Biocida: o rótulo é o limite. Onde a lei exige aplicador certificado ou aprendiz supervisionado, os demais param aqui. Mantenha separados no tempo e no lugar os produtos diferentes, como dizem os rótulos."),
        Caution.RunningTower => new(
            "Near a running tower: fans off where practical; a fitted respirator if mist cannot be avoided.",
            "Cerca de una torre en marcha: ventiladores parados si es posible; mascarilla ajustada si no se puede evitar la niebla.",
            "Perto de uma torre em funcionamento: ventiladores parados se possível; respirador ajustado se a névoa não puder ser evitada."),
        Caution.Heights => new(
            "Roof and ladder: fall hazard, wet.",
            "Cubierta y escalera: peligro de caída, suelo mojado.",
            "Telhado e escada: risco de queda, piso molhado."),
        Caution.Concentrate => new(
            "Never pour concentrate straight into a basin unless the label says how.",
            "No vierta nunca concentrado directamente en la balsa, salvo que la etiqueta diga cómo.",
            "Nunca despeje concentrado direto na bacia, a menos que o rótulo diga como."),
        Caution.HigherCycles => new(
            "Higher cycles concentrate metals too: the permit for what goes to the sewer may set the limit.",
            "Más ciclos concentran también los metales: el permiso de vertido al alcantarillado puede poner el límite.",
            "Mais ciclos concentram também os metais: a licença de descarte no esgoto pode pôr o limite."),
        Caution.Basin => new(
            "Basin, sump or cell may be a confined space: no entry without a permit.",
            "La balsa, el foso o la celda pueden ser un espacio confinado: no entre sin permiso.",
            "A bacia, o poço ou a célula podem ser espaço confinado: não entre sem permissão."),
        Caution.WaterOut => new(
            "Bleed, overflow and cleaning water: to the sewer only as permitted, not to a storm drain.",
            "Agua de purga, rebose y limpieza: al alcantarillado solo según el permiso, nunca al drenaje pluvial.",
            "Água de purga, transbordo e limpeza: à rede de esgoto só conforme a licença, nunca à galeria pluvial."),
        Caution.LaboratoryResult => new(
            "A count is not a diagnosis. Follow the plan and the authority's table; notify in time.",
            "Un recuento no es un diagnóstico. Siga el plan y la tabla de la autoridad; notifique a tiempo.",
            "Uma contagem não é um diagnóstico. Siga o plano e a tabela da autoridade; notifique a tempo."),
        _ => new(
            "Calculated from entered values; a competent person approves.",
            "Calculado con los valores anotados; lo aprueba una persona competente.",
            "Calculado com os valores anotados; uma pessoa competente aprova."),
    };
}
