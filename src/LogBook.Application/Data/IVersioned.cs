namespace LogBook.Application.Data;

/// <summary>A row that people edit: its version is the concurrency token, because SQLite makes none of its own.</summary>
public interface IVersioned
{
    /// <summary>1 for the first version; counted up with each save.</summary>
    int Version { get; set; }
}
