using Microsoft.EntityFrameworkCore.Metadata;

namespace LabVolatility.Laboratory.Records;

/// <summary>One member of a recorded thing, under the name it has in the record.</summary>
internal sealed record RecordedMember(IProperty Property, string Name, MemberKind Kind);
