namespace LogBook.Web.Features.Attention;

/// <summary>What a supervisor answers to a finding.</summary>
public enum FindingAct
{
    /// <summary>Nothing chosen yet.</summary>
    None,

    /// <summary>Somebody takes it on.</summary>
    TakeOn,

    /// <summary>It sleeps until a day.</summary>
    Sleep,

    /// <summary>It is over.</summary>
    Close,

    /// <summary>The answer is taken back.</summary>
    OpenAgain,
}
