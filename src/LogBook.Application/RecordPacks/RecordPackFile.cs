namespace LogBook.Application.RecordPacks;

/// <summary>What was written into the file of a record pack.</summary>
/// <param name="Name">Name of the file.</param>
/// <param name="Visits">Visits that count.</param>
/// <param name="Results">Results in it.</param>
/// <param name="Photos">Pictures in it.</param>
/// <param name="MissingPhotos">Photos that visits name and whose pictures are not in it; it lists each with the reason.</param>
public sealed record RecordPackFile(string Name, int Visits, int Results, int Photos, int MissingPhotos);
