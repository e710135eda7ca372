namespace LogBook.Web.Hosting;

/// <summary>The host was asked for something that it must not do; the message says what to do instead.</summary>
public sealed class StartRefusedException(string message) : Exception(message);
