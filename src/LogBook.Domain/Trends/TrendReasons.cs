using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Why a series shows no trend or limits.</summary>
public static class TrendReasons
{
    /// <summary>Too few points.</summary>
    public static readonly Reason TooFewPoints = new("too-few-points", new Text(
        "There are too few readings.",
        "Hay muy pocas lecturas.",
        "Há poucas leituras."));

    /// <summary>All points at one time.</summary>
    public static readonly Reason NoSpread = new("no-spread", new Text(
        "All readings are at one time.",
        "Todas las lecturas son del mismo momento.",
        "Todas as leituras são do mesmo momento."));

    /// <summary>A series holds something that is not a number, or the two lists differ in length.</summary>
    public static readonly Reason SeriesUnsound = new("series-unsound", new Text(
        "The series of readings is incomplete.",
        "La serie de lecturas está incompleta.",
        "A série de leituras está incompleta."));

    /// <summary>The line does not reach the limit.</summary>
    public static readonly Reason NeverReached = new("limit-never-reached", new Text(
        "At this trend the limit is not reached.",
        "Con esta tendencia no se alcanza el límite.",
        "Com esta tendência o limite não é alcançado."));
}
