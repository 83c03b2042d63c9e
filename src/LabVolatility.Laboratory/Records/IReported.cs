namespace LabVolatility.Laboratory.Records;

/// <summary>A reported fact: added once, never updated or deleted. Triggers on both engines guard its table.</summary>
public interface IReported : IRecorded;
