namespace LabVolatility.Laboratory.Records;

/// <summary>What is wrong, where, and by which rule.</summary>
/// <param name="Field">JSON pointer of the field, "" for the whole.</param>
/// <param name="Message">What is wrong and what to do, in the words of the trade.</param>
/// <param name="Rule">The name of the laboratory's rule that refuses, or null for plain bad input.</param>
public sealed record Problem(string Field, string Message, string? Rule = null);
