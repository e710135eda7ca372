using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LogBook.Application.Data.Conventions;

/// <summary>For the one <see cref="DateTimeOffset"/> of the sign-in tables, which SQLite could not order.</summary>
internal sealed class UnixMillisecondsOffsetConverter() : ValueConverter<DateTimeOffset, long>(
    time => time.ToUnixTimeMilliseconds(),
    milliseconds => DateTimeOffset.FromUnixTimeMilliseconds(milliseconds));
