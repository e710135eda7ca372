namespace LogBook.Application.Rescue;

/// <summary>A photo in a rescue file.</summary>
/// <param name="Id">Identity of the photo in its visit.</param>
/// <param name="Visit">Identity of the visit or draft.</param>
/// <param name="Sha256">SHA-256 of the picture, lower-case hexadecimal.</param>
/// <param name="Data">The picture, made small and without location by the tablet.</param>
public sealed record RescuePhoto(Guid Id, Guid Visit, string Sha256, byte[] Data);
