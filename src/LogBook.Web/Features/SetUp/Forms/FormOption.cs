namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>A value of a choice with its words.</summary>
public sealed record FormOption(string Value, string Words);
