namespace LabVolatility.Web.Layout;

/// <summary>A key and what it does: ("Ctrl+Enter", "report the determination").</summary>
public sealed record KeyHint(string Keys, string Does);
