namespace LogBook.Entry.Drafts;

/// <summary>Hears what of a draft is read and written.</summary>
internal interface IDraftWatch
{
    /// <summary>A field was read.</summary>
    /// <param name="key">Its key.</param>
    void Read(string key);

    /// <summary>It was asked whether anything stands under a key.</summary>
    /// <param name="key">Start of the keys.</param>
    void ReadUnder(string key);

    /// <summary>The parts under a key were read.</summary>
    /// <param name="key">Start of the keys.</param>
    void ReadParts(string key);

    /// <summary>All fields were read.</summary>
    void ReadAll();

    /// <summary>A field is another now.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="isPart">Whether it came or went.</param>
    void Wrote(string key, bool isPart);
}
