namespace LabVolatility.Laboratory.Records;

/// <summary>Leaves a property out of audit records: secrets, and counters that say nothing about the work.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class NotRecordedAttribute : Attribute;
