namespace LabVolatility.Laboratory.People;

/// <summary>The roles in words.</summary>
public static class RoleNames
{
    /// <summary>Every single role with its name, in the order of the table of rights.</summary>
    public static IReadOnlyList<(Roles Role, string Name)> All { get; } =
    [
        (Roles.Analyst, "analyst"),
        (Roles.ShiftChemist, "shift chemist"),
        (Roles.BlendingEngineer, "blending engineer"),
        (Roles.QualityManager, "quality manager"),
        (Roles.Administrator, "administrator"),
        (Roles.Auditor, "auditor"),
    ];

    public static IReadOnlyList<string> Of(Roles roles) => [.. All.Where(r => roles.HasFlag(r.Role)).Select(r => r.Name)];

    public static string Text(Roles roles) => string.Join(", ", Of(roles));

    /// <summary>Reads one role as typed at the command line: "shift-chemist" or "shift chemist".</summary>
    public static bool TryParse(string text, out Roles role)
    {
        role = All.FirstOrDefault(r => string.Equals(r.Name, text.Trim().Replace('-', ' '), StringComparison.OrdinalIgnoreCase)).Role;
        return role != Roles.None;
    }
}
