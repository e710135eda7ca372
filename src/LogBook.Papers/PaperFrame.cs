namespace LogBook.Papers;

/// <summary>What stands around the content of every page, and what the file says about itself.</summary>
public sealed record PaperFrame
{
    /// <summary>Title of the document; not drawn by itself.</summary>
    public required string Title { get; init; }

    /// <summary>Top left of each page, bold.</summary>
    public string HeaderLeft { get; init; } = "";

    /// <summary>Top right of each page.</summary>
    public string HeaderRight { get; init; } = "";

    /// <summary>Bottom left of each page.</summary>
    public string FooterLeft { get; init; } = "";

    /// <summary>Page number, bottom right: {0} is the page, {1} the number of pages.</summary>
    public string PageOf { get; init; } = "{0} / {1}";

    /// <summary>Language of the text, as in <c>en</c>.</summary>
    public string Language { get; init; } = "en";

    /// <summary>Who or what wrote it.</summary>
    public string Author { get; init; } = "";

    /// <summary>Moment the file names as its own, UTC. It is part of the bytes.</summary>
    public required DateTime MadeAt { get; init; }

    /// <summary>The sheet.</summary>
    public PaperSize Size { get; init; } = PaperSize.A4;

    /// <summary>The long side lies.</summary>
    public bool Landscape { get; init; }

    /// <summary>Rows of tables stand close, for a list that belongs on one page.</summary>
    public bool IsDense { get; init; }

    /// <summary>Size of the text of paragraphs and tables, points.</summary>
    public double Points { get; init; } = 9.5;
}
