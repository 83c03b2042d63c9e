namespace LabVolatility.Web.Layout;

/// <summary>The keys of every list that carries data-rows; rows.js makes them work.</summary>
public static class ListKeys
{
    public static IReadOnlyList<KeyHint> Hints { get; } =
    [
        new("↑ ↓, Home, End, Page Up, Page Down", "from row to row of a list"),
        new("Enter", "open the row"),
        new("→ ←", "the links of the row, and back to it"),
    ];
}
