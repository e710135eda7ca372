using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Help;

/// <summary>Help of one screen.</summary>
/// <param name="Key">Last part of its address: lower case with hyphens.</param>
/// <param name="Title">What the screen is called.</param>
/// <param name="Paragraphs">What it is for and how it is used, a few sentences each.</param>
/// <param name="Routes">Templates of the pages it belongs to, exactly as after `@page`.</param>
public sealed record HelpPage(string Key, Text Title, IReadOnlyList<Text> Paragraphs, params IReadOnlyList<string> Routes);
