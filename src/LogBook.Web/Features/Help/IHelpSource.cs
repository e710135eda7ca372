namespace LogBook.Web.Features.Help;

/// <summary>Help texts of a feature. A class beside the feature implements it; the registry finds it by itself.</summary>
public interface IHelpSource
{
    /// <summary>The feature's help pages.</summary>
    IReadOnlyList<HelpPage> Pages { get; }
}
