namespace LabVolatility.Web.Commands;

/// <summary>A command can't be done; the message says why and what to do.</summary>
public sealed class CommandRefusedException(string message) : Exception(message);
