namespace LabVolatility.Laboratory.Records;

/// <summary>A regulated thing: every change of it leaves an audit record in the same transaction.</summary>
public interface IRecorded;
