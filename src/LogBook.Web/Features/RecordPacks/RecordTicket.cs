using LogBook.Application.RecordPacks;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>A record pack that is ready.</summary>
/// <param name="Id">Identity of the file, for the person who asked for it.</param>
/// <param name="File">Its name, and what is in it.</param>
/// <param name="Bytes">Size.</param>
public sealed record RecordTicket(Guid Id, RecordPackFile File, long Bytes);
