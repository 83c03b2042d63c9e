namespace LabVolatility.Laboratory.Records;

/// <summary>What the check of the records found.</summary>
/// <param name="Intact">True where the chain is unbroken and every recorded row is as its last record says.</param>
/// <param name="Records">How many audit records there are.</param>
/// <param name="Head">Hash of the last record; to be kept where nobody with access to the database can change it.</param>
/// <param name="FirstBroken">Sequence of the first record that doesn't fit the chain.</param>
/// <param name="Findings">What is wrong, each naming record or table and row; the first ones where there are many.</param>
public sealed record RecordsReport(bool Intact, long Records, string? Head, long? FirstBroken, IReadOnlyList<string> Findings);
