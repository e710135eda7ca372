namespace LogBook.Application.Search;

/// <summary>What was found.</summary>
public enum SearchHitKind
{
    /// <summary>A site.</summary>
    Site,

    /// <summary>A system.</summary>
    System,

    /// <summary>A customer.</summary>
    Customer,

    /// <summary>A visit.</summary>
    Visit,

    /// <summary>A product.</summary>
    Product,

    /// <summary>A person.</summary>
    Person,
}
