using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LogBook.Application.Data.Conventions;

/// <summary>SQLite has no time type: moments are integer Unix milliseconds, which sort and compare, and come back as UTC.</summary>
internal sealed class UnixMillisecondsConverter() : ValueConverter<DateTime, long>(
    time => (Utc.Of(time).Ticks - DateTime.UnixEpoch.Ticks) / TimeSpan.TicksPerMillisecond,
    milliseconds => new DateTime(DateTime.UnixEpoch.Ticks + (milliseconds * TimeSpan.TicksPerMillisecond), DateTimeKind.Utc));
