using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LabVolatility.Laboratory.Storage.Postgres;

internal sealed class UtcConverter()
    : ValueConverter<DateTimeOffset, DateTimeOffset>(value => Instant.Cut(value), stored => stored.ToUniversalTime());
