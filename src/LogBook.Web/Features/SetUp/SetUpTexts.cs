using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp;

/// <summary>Words of the set-up pages.</summary>
public static class SetUpTexts
{
    public static readonly Text Title = new("Set-up", "Configuración", "Configuração");
    public static readonly Text Customers = new("Customers", "Clientes", "Clientes");
    public static readonly Text Customer = new("Customer", "Cliente", "Cliente");
    public static readonly Text Sites = new("Sites", "Sitios", "Locais");
    public static readonly Text Site = new("Site", "Sitio", "Local");
    public static readonly Text Systems = new("Systems", "Sistemas", "Sistemas");
    public static readonly Text System = new("System", "Sistema", "Sistema");
    public static readonly Text People = new("People", "Personas", "Pessoas");
    public static readonly Text Person = new("Person", "Persona", "Pessoa");
    public static readonly Text Products = new("Products", "Productos", "Produtos");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Instruments = new("Instruments", "Instrumentos", "Instrumentos");
    public static readonly Text Instrument = new("Instrument", "Instrumento", "Instrumento");
    public static readonly Text Lots = new("Reagent lots", "Lotes de reactivo", "Lotes de reagente");
    public static readonly Text Lot = new("Reagent lot", "Lote de reactivo", "Lote de reagente");
    public static readonly Text Rules = new("Rules", "Normas", "Regras");
    public static readonly Text Rule = new("Rule", "Norma", "Regra");
    public static readonly Text Tests = new("Tests of the firm", "Ensayos de la empresa", "Ensaios da empresa");
    public static readonly Text Test = new("Test", "Ensayo", "Ensaio");
    public static readonly Text Programmes = new("Programmes", "Programas", "Programas");
    public static readonly Text Programme = new("Programme", "Programa", "Programa");
    public static readonly Text ProgrammesOf = new("Programmes of {0}", "Programas de {0}", "Programas de {0}");

    public static readonly Text StartHere = new("Where to begin", "Por dónde empezar", "Por onde começar");
    public static readonly Text StartWhy = new(
        "A visit can be entered as soon as there is a system with a programme and somebody who visits it. In this order each step finds what it needs.",
        "Se puede anotar una visita en cuanto haya un sistema con programa y alguien que lo visite. En este orden cada paso encuentra lo que necesita.",
        "Uma visita pode ser anotada assim que houver um sistema com programa e alguém que o visite. Nesta ordem cada passo encontra o que precisa.");
    public static readonly Text StepCustomer = new("The first customer, with who gets the summaries", "El primer cliente, con quién recibe los resúmenes", "O primeiro cliente, com quem recebe os resumos");
    public static readonly Text StepSite = new("A site of that customer, with its time zone", "Un sitio de ese cliente, con su zona horaria", "Um local desse cliente, com o seu fuso horário");
    public static readonly Text StepSystem = new("A water system of that site, with its meters, outputs and probes", "Un sistema de agua de ese sitio, con sus contadores, salidas y sondas", "Um sistema de água desse local, com seus hidrômetros, saídas e sondas");
    public static readonly Text StepPerson = new("The people who visit it", "Las personas que lo visitan", "As pessoas que o visitam");
    public static readonly Text StepProduct = new("The products that are fed, from their labels; then the system's drums and pumps", "Los productos que se dosifican, según sus etiquetas; luego los bidones y bombas del sistema", "Os produtos que são dosados, conforme os rótulos; depois as bombonas e bombas do sistema");
    public static readonly Text StepProgramme = new("The system's programme: set point, ranges, feeds", "El programa del sistema: consigna, rangos, dosificaciones", "O programa do sistema: ponto de ajuste, faixas, dosagens");
    public static readonly Text Done = new("done", "hecho", "feito");
    public static readonly Text Next = new("next", "siguiente", "próximo");
    public static readonly Text Later = new("later", "después", "depois");
    public static readonly Text InUse = new("{0} in use", "{0} en uso", "{0} em uso");
    public static readonly Text WithoutProgramme = new("without a programme: {0}", "sin programa: {0}", "sem programa: {0}");

    public static readonly Text New = new("New: {0}", "Nuevo: {0}", "Novo: {0}");
    public static readonly Text Empty = new("None yet", "Todavía ninguno", "Nenhum ainda");
    public static readonly Text Find = new("Find", "Buscar", "Procurar");
    public static readonly Text ShowRetired = new("Show retired ones too", "Mostrar también los retirados", "Mostrar também os retirados");
    public static readonly Text Code = new("Code", "Código", "Código");
    public static readonly Text Name = new("Name", "Nombre", "Nome");
    public static readonly Text Details = new("Details", "Detalles", "Detalhes");
    public static readonly Text Standing = new("State", "Estado", "Estado");
    public static readonly Text IsInUse = new("in use", "en uso", "em uso");
    public static readonly Text IsRetired = new("retired {0}", "retirado {0}", "retirado {0}");

    public static readonly Text Save = new("Save", "Guardar", "Salvar");
    public static readonly Text Back = new("Back to the list", "Volver a la lista", "Voltar à lista");
    public static readonly Text Saved = new("Saved.", "Guardado.", "Salvo.");
    public static readonly Text ToCorrect = new("Nothing was saved. To correct:", "No se guardó nada. Por corregir:", "Nada foi salvo. A corrigir:");
    public static readonly Text NotAllowed = new("Your account may not change this.", "Su cuenta no puede cambiar esto.", "Sua conta não pode mudar isto.");
    public static readonly Text Gone = new("This record is not there any more; nothing was saved. What you typed still stands here.", "Este registro ya no está; no se guardó nada. Lo que escribió sigue aquí.", "Este registro não existe mais; nada foi salvo. O que você digitou continua aqui.");
    public static readonly Text Leave = new("Leave this page? What was typed since the last save is lost.", "¿Salir de esta página? Se pierde lo escrito desde que se guardó.", "Sair desta página? O que foi digitado desde o último salvamento se perde.");

    public static readonly Text Meanwhile = new("Somebody else saved this record meanwhile", "Otra persona guardó este registro entretanto", "Outra pessoa salvou este registro entretanto");
    public static readonly Text MeanwhileMore = new(
        "Nothing of yours was saved, and nothing of it is lost. What differs:",
        "No se guardó nada suyo y nada se ha perdido. Diferencias:",
        "Nada seu foi salvo e nada se perdeu. Diferenças:");
    public static readonly Text Field = new("Field", "Campo", "Campo");
    public static readonly Text StandsNow = new("Stands now", "Ahora consta", "Consta agora");
    public static readonly Text Yours = new("Yours", "Lo suyo", "O seu");
    public static readonly Text TakeOver = new("Take over what stands now", "Tomar lo que consta ahora", "Adotar o que consta agora");
    public static readonly Text GoOn = new("Go on with my changes", "Seguir con mis cambios", "Continuar com minhas mudanças");
    public static readonly Text TakenOver = new("What stands now is shown; nothing was saved.", "Se muestra lo que consta ahora; no se guardó nada.", "É mostrado o que consta agora; nada foi salvo.");
    public static readonly Text GoingOn = new("Your changes are put upon what stands now. Look once more, then save.", "Sus cambios están sobre lo que consta ahora. Revise y guarde.", "Suas mudanças estão sobre o que consta agora. Confira e salve.");

    public static readonly Text Retire = new("Take out of use", "Retirar", "Retirar de uso");
    public static readonly Text RetireMeans = new(
        "It is no longer offered in forms and rounds. Visits and histories that name it stay as they are, and it can be restored.",
        "Ya no se ofrece en formularios ni rondas. Las visitas e historiales que lo nombran quedan como están, y se puede restaurar.",
        "Deixa de ser oferecido em formulários e rondas. As visitas e os históricos que o citam ficam como estão, e pode ser restaurado.");
    public static readonly Text Restore = new("Take into use again", "Volver a usar", "Voltar a usar");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text ReasonNeeded = new("Reason: missing. Say in a few words why.", "Motivo: falta. Diga en pocas palabras por qué.", "Motivo: falta. Diga em poucas palavras por quê.");
    public static readonly Text Sure = new("I am sure", "Estoy seguro", "Tenho certeza");
    public static readonly Text SureNeeded = new("Tick “I am sure” first.", "Marque primero «Estoy seguro».", "Marque primeiro “Tenho certeza”.");
    public static readonly Text Confirm = new("Confirm", "Confirmar", "Confirmar");
    public static readonly Text Cancel = new("Cancel", "Cancelar", "Cancelar");
    public static readonly Text RetiredSince = new("Out of use since {0}: {1}", "Retirado desde {0}: {1}", "Fora de uso desde {0}: {1}");

    public static readonly Text From = new("From", "Desde", "Desde");
    public static readonly Text Until = new("Until", "Hasta", "Até");
    public static readonly Text Current = new("in force", "en vigor", "em vigor");
    public static readonly Text Past = new("past", "pasado", "passado");
    public static readonly Text Future = new("to come", "futuro", "futuro");
    public static readonly Text NewProgramme = new("New programme", "Programa nuevo", "Novo programa");
    public static readonly Text Acts = new("What can be done", "Qué se puede hacer", "O que se pode fazer");
    public static readonly Text CopyProgramme = new("New one from a copy", "Nuevo a partir de una copia", "Novo a partir de uma cópia");
    public static readonly Text NoProgramme = new("No programme yet", "Todavía sin programa", "Sem programa ainda");
    public static readonly Text NoProgrammeMore = new("Without one there are no ranges to judge by and no feeds to expect.", "Sin él no hay rangos con que juzgar ni dosificaciones que esperar.", "Sem ele não há faixas para avaliar nem dosagens a esperar.");
    public static readonly Text ProgrammesSucceed = new(
        "Each programme holds from its day until the next one begins. When the plan changes, make a new one from a copy: what was judged before stays.",
        "Cada programa rige desde su día hasta que empieza el siguiente. Si el plan cambia, haga uno nuevo a partir de una copia: lo ya juzgado queda.",
        "Cada programa vale do seu dia até começar o seguinte. Quando o plano muda, faça um novo a partir de uma cópia: o que já foi avaliado fica.");
    public static readonly Text PastWarning = new(
        "This programme has been in force since {0}. Changing it changes what all visits since then are judged by. For a change of plan make a new programme from a copy.",
        "Este programa rige desde {0}. Cambiarlo cambia con qué se juzgan todas las visitas desde entonces. Para un cambio de plan haga un programa nuevo a partir de una copia.",
        "Este programa vale desde {0}. Mudá-lo muda com que são avaliadas todas as visitas desde então. Para uma mudança de plano faça um novo programa a partir de uma cópia.");
    public static readonly Text PastSure = new("It was entered wrongly; change what it has been since then", "Se introdujo mal; cambiar lo que ha sido desde entonces", "Foi informado errado; mudar o que tem sido desde então");
    public static readonly Text PastSureNeeded = new("Tick the box that the programme was entered wrongly, or make a new one from a copy.", "Marque la casilla de que se introdujo mal, o haga uno nuevo a partir de una copia.", "Marque a caixa de que foi informado errado, ou faça um novo a partir de uma cópia.");
    public static readonly Text DayTaken = new("In force from: there is a programme from {0} already; expected is another day.", "En vigor desde: ya hay un programa desde {0}; se espera otro día.", "Em vigor desde: já há um programa desde {0}; esperado outro dia.");
    public static readonly Text Points = new("{0} ranges, {1} feeds", "{0} rangos, {1} dosificaciones", "{0} faixas, {1} dosagens");

    public static readonly Text DoseAboveLabel = new(
        "{0}: {1} is above the label limit of {2}. Stop. The label is the limit.",
        "{0}: {1} supera el límite de etiqueta de {2}. Deténgase. La etiqueta es el límite.",
        "{0}: {1} está acima do limite do rótulo de {2}. Pare. O rótulo é o limite.");
    public static readonly Text LabelFirst = new(
        "Copy these numbers from the label of the product as delivered. The label is the limit; LogBook warns by what stands here.",
        "Copie estas cifras de la etiqueta del producto tal como se entrega. La etiqueta es el límite; LogBook avisa según lo que aquí consta.",
        "Copie estes números do rótulo do produto como entregue. O rótulo é o limite; o LogBook avisa conforme o que está aqui.");
    public static readonly Text NeverTogether = new(
        "{0} and {1} must never meet, as {0} says: keep apart in time and place as the labels say.",
        "{0} y {1} nunca deben juntarse, según {0}: manténgalos separados en tiempo y lugar como dicen las etiquetas.",
        "{0} e {1} nunca devem se encontrar, conforme {0}: mantenha-os separados no tempo e no lugar como dizem os rótulos.");
}
