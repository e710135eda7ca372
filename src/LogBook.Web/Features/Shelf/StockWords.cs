using LogBook.Domain.Estimates;
using LogBook.Web.Components.Parts;

namespace LogBook.Web.Features.Shelf;

/// <summary>Shape that goes with the standing of a drum.</summary>
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
}
