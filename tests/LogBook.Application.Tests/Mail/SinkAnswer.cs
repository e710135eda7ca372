namespace LogBook.Application.Tests.Mail;

/// <summary>How the sink treats one connection.</summary>
internal enum SinkAnswer
{
    /// <summary>Takes the message and says so.</summary>
    Accept,

    /// <summary>Answers 451 to the message: not now.</summary>
    NotNow,

    /// <summary>Answers 421 instead of a greeting: not now.</summary>
    Closed,

    /// <summary>Answers 550 to the recipient: never.</summary>
    Never,

    /// <summary>Says nothing at all.</summary>
    Silent,

    /// <summary>Closes the connection in the middle of the message.</summary>
    DropBeforeDot,

    /// <summary>Keeps the message, but closes the connection before it says so.</summary>
    DropAfterDot,

    /// <summary>Keeps the message, but never says so.</summary>
    SilentAfterDot,

    /// <summary>Takes the message, says so and then says nothing to the goodbye.</summary>
    SilentAtQuit,

    /// <summary>Wants a sign-in that nobody set up.</summary>
    WantsSignIn,
}
