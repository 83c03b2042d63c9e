using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace LabVolatility.Laboratory.Storage.Sqlite;

internal sealed class MicrosecondConverter()
    : ValueConverter<DateTimeOffset, long>(value => Instant.ToMicroseconds(value), stored => Instant.FromMicroseconds(stored));
