namespace LogBook.Web.Components.Parts;

/// <summary>Shape and colour of a state; its word is given by the page.</summary>
public enum StateKind
{
    /// <summary>Nothing to say.</summary>
    Neutral,

    /// <summary>Act now: triangle.</summary>
    Act,

    /// <summary>Plan: lozenge.</summary>
    Plan,

    /// <summary>Watch: ring.</summary>
    Watch,

    /// <summary>Done: tick.</summary>
    Done,
}
