namespace LabVolatility.Web.Setup;

/// <summary>How far a piece of start-up work has come.</summary>
public readonly record struct StartupProgress(int Done, int Total);
