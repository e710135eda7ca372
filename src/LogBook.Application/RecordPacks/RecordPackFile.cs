namespace LogBook.Application.RecordPacks;

/// <summary>A record pack ready to be taken along.</summary>
/// <param name="Name">Name of the file.</param>
/// <param name="Zip">Paper, workbook and checksums in one.</param>
/// <param name="Visits">Visits that count.</param>
/// <param name="Results">Results in it.</param>
public sealed record RecordPackFile(string Name, byte[] Zip, int Visits, int Results);
