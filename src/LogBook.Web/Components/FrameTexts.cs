using LogBook.Domain.Languages;

namespace LogBook.Web.Components;

/// <summary>Words of the frame around every page.</summary>
public static class FrameTexts
{
    public static readonly Text LogBook = new("LogBook", "LogBook", "LogBook");

    public static readonly Text SkipToContent = new("Go to the content", "Ir al contenido", "Ir para o conteúdo");

    public static readonly Text Sections = new("Sections", "Secciones", "Seções");

    public static readonly Text Leave = new("Leave", "Ausencias", "Ausências");
    public static readonly Text Plan = new("Plan", "Plan", "Plano");
    public static readonly Text TodaysRound = new("Today's round", "Ronda de hoy", "Ronda de hoje");

    public static readonly Text NeedsAttention = new("Needs attention", "Requiere atención", "Requer atenção");

    public static readonly Text Sites = new("Sites", "Sitios", "Locais");

    public static readonly Text Visits = new("Visits", "Visitas", "Visitas");

    public static readonly Text Shelf = new("Shelf", "Existencias", "Estoque");

    public static readonly Text Clocks = new("Clocks", "Plazos", "Prazos");

    public static readonly Text SetUp = new("Set-up", "Configuración", "Configuração");

    public static readonly Text People = new("People", "Personas", "Pessoas");

    public static readonly Text Mail = new("Mail", "Correo", "Correio");

    public static readonly Text Tokens = new("Access tokens", "Claves de acceso", "Chaves de acesso");

    public static readonly Text Help = new("Help", "Ayuda", "Ajuda");

    public static readonly Text HelpHere = new("Help for this page", "Ayuda de esta página", "Ajuda desta página");

    public static readonly Text More = new("More", "Más", "Mais");

    public static readonly Text Account = new("Your account", "Su cuenta", "Sua conta");

    public static readonly Text SignOut = new("Sign out", "Cerrar sesión", "Sair");

    public static readonly Text SignIn = new("Sign in", "Iniciar sesión", "Entrar");

    public static readonly Text Search = new("Search", "Buscar", "Buscar");

    public static readonly Text SearchHint = new("Site, system, visit …", "Sitio, sistema, visita …", "Local, sistema, visita …");

    public static readonly Text Look = new("Look", "Aspecto", "Aparência");

    public static readonly Text LookSystem = new("As the device", "Como el dispositivo", "Como o dispositivo");

    public static readonly Text LookLight = new("Light", "Claro", "Claro");

    public static readonly Text LookDark = new("Dark", "Oscuro", "Escuro");

    public static readonly Text DemoNote = new(
        "Demo with an invented firm. Its clock started the day after its last visit; here it is now {0}. Mail stays on this machine.",
        "Demostración con una empresa inventada. Su reloj empezó el día después de la última visita; aquí es ahora {0}. El correo no sale de este equipo.",
        "Demonstração com uma empresa inventada. Seu relógio começou no dia seguinte à última visita; aqui agora é {0}. O correio não sai desta máquina.");

    public static readonly Text LineLost = new("The line to the server is lost", "Se perdió la conexión con el servidor", "A conexão com o servidor caiu");

    public static readonly Text LineLostMore = new(
        "What was saved is kept on the server. This page comes back by itself.",
        "Lo guardado está en el servidor. Esta página vuelve sola.",
        "O que foi salvo está no servidor. Esta página volta sozinha.");

    public static readonly Text Reconnecting = new("Trying to reach the server …", "Intentando llegar al servidor …", "Tentando alcançar o servidor …");

    public static readonly Text TryNow = new("Try now", "Intentar ahora", "Tentar agora");

    public static readonly Text Loading = new("Loading …", "Cargando …", "Carregando …");

    public static readonly Text Caution = new("Caution", "Precaución", "Cuidado");

    public static readonly Text SomethingBroke = new("This did not work", "Esto no funcionó", "Isto não funcionou");

    public static readonly Text SomethingBrokeMore = new(
        "A fault in the program stopped this page. It is noted under {0}. What was saved before is kept.",
        "Un fallo del programa detuvo esta página. Está anotado con la referencia {0}. Lo guardado antes se conserva.",
        "Uma falha do programa parou esta página. Ela está anotada sob {0}. O que foi salvo antes está mantido.");

    public static readonly Text LoadAgain = new("Load the page again", "Cargar la página de nuevo", "Carregar a página de novo");

    public static readonly Text NotFound = new("Nothing here", "Aquí no hay nada", "Nada aqui");

    public static readonly Text NotFoundMore = new(
        "There is no such page, or it is not for this account.",
        "No existe esta página, o no es para esta cuenta.",
        "Esta página não existe, ou não é para esta conta.");

    public static readonly Text ToStart = new("To the first page", "A la primera página", "À primeira página");

    public static readonly Text SignedOutMore = new(
        "You are signed out. Sign in to go on.",
        "La sesión está cerrada. Inicie sesión para continuar.",
        "A sessão terminou. Entre para continuar.");
}
