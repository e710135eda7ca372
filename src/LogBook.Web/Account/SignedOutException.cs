namespace LogBook.Web.Account;

/// <summary>The page was open longer than its sign-in; the frame says so.</summary>
public sealed class SignedOutException() : Exception("Nobody is signed in, or the account may not be used any more.");
