namespace LogBook.Papers;

/// <summary>One column of a table.</summary>
/// <param name="Title">Its heading, repeated on each page.</param>
/// <param name="Weight">Its share of the width beside the weights of the others, above 0.</param>
/// <param name="Align">Where its texts stand.</param>
public sealed record PaperColumn(string Title, double Weight = 1, PaperAlign Align = PaperAlign.Left);
