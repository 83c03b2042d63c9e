namespace LabVolatility.Laboratory.Records;

/// <summary>How a member is written in canonical text.</summary>
internal enum MemberKind
{
    Text,
    Json,
    Integer,
    Decimal,
    Boolean,
    Instant,
    Date,
    Identifier,
    Bytes,
}
