namespace LogBook.Web.Features.RecordPacks;

/// <summary>A record pack that is ready.</summary>
/// <param name="Id">Identity of the file, for the person who asked for it.</param>
/// <param name="Name">Name of the file.</param>
/// <param name="Visits">Visits in it.</param>
/// <param name="Results">Results in it.</param>
/// <param name="Bytes">Size.</param>
public sealed record RecordTicket(Guid Id, string Name, int Visits, int Results, int Bytes);
