using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LogBook.Application.Data.Conventions;

/// <summary>PostgreSQL refuses unspecified times for <c>timestamptz</c>; both providers keep milliseconds and no more.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTime, DateTime>(
    time => Utc.Of(time),
    time => DateTime.SpecifyKind(time, DateTimeKind.Utc));
