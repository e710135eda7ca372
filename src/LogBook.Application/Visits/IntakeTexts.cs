using LogBook.Domain.Languages;

namespace LogBook.Application.Visits;

/// <summary>What is said about visits that cannot be taken in or changed.</summary>
internal static class IntakeTexts
{
    public static readonly Text OneVisit = new(
        "Exactly one visit is expected, and nothing else.",
        "Se espera exactamente una visita y nada más.",
        "Espera-se exatamente uma visita e nada mais.");

    public static readonly Text VersionGap = new(
        "This is version {0}, but version {1} stands here: an amendment must name the version it replaces.",
        "Esta es la versión {0}, pero aquí consta la versión {1}: una enmienda debe nombrar la versión que sustituye.",
        "Esta é a versão {0}, mas aqui consta a versão {1}: uma retificação deve indicar a versão que substitui.");

    public static readonly Text SiteStays = new(
        "An amendment stays at its site. Move the visit instead.",
        "Una enmienda se queda en su sitio. Mueva la visita.",
        "Uma retificação permanece no seu local. Mova a visita.");

    public static readonly Text OtherContent = new(
        "This visit is known with other content.",
        "Esta visita ya consta con otro contenido.",
        "Esta visita já consta com outro conteúdo.");

    public static readonly Text PhotoTaken = new(
        "The photo {0} belongs to another visit.",
        "La foto {0} pertenece a otra visita.",
        "A foto {0} pertence a outra visita.");

    public static readonly Text NoSuchSystem = new(
        "The site {0} has no system {1}.",
        "El sitio {0} no tiene el sistema {1}.",
        "O local {0} não tem o sistema {1}.");
}
