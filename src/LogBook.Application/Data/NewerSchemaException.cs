namespace LogBook.Application.Data;

/// <summary>The database was written by a newer LogBook; this one would harm it.</summary>
public sealed class NewerSchemaException(string migration)
    : InvalidOperationException($"The database was written by a newer LogBook (it knows \"{migration}\"). Install that version again; nothing was changed.");
