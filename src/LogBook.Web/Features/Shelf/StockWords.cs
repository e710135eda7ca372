using LogBook.Application.Shelf;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Web.Components.Parts;

namespace LogBook.Web.Features.Shelf;

/// <summary>Shape that goes with the standing of a drum, and its next visits.</summary>
public static class StockWords
{
    /// <summary>The shape.</summary>
    public static StateKind Shape(StockStanding standing) => standing switch
    {
        StockStanding.Empty or StockStanding.BeforeNext => StateKind.Act,
        StockStanding.PerhapsBeforeNext => StateKind.Plan,
        StockStanding.BeforeSecond => StateKind.Watch,
        _ => StateKind.Neutral,
    };

    /// <summary>The next two visits; where no interval is agreed, the one that was taken.</summary>
    public static string Visits(ShelfLine line, Language language) => line is { NextVisit: { } next, SecondVisit: { } second }
        ? $"{Shown.Day(next, language)}, {Shown.Day(second, language)}"
        : ShelfTexts.NoInterval.In(language, Shown.PlainWithUnit(PackList.UsualDays, "d", language));
}
