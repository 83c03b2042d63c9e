using System.Globalization;
using System.Reflection;

namespace LabVolatility.Core.Tests;

/// <summary>Reads a table of published or worked values that lies beside the tests.</summary>
internal static class Rows
{
    public static IReadOnlyList<string[]> Of(string table)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"LabVolatility.Core.Tests.{table}.csv")
            ?? throw new InvalidOperationException($"There is no table {table}.");
        using var reader = new StreamReader(stream);
        var rows = reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => !line.StartsWith('#')).Skip(1).Select(line => line.Split(';')).ToList();
        return rows.Count > 0 ? rows : throw new InvalidOperationException($"The table {table} is empty.");
    }

    public static decimal Number(this string cell) => decimal.Parse(cell, CultureInfo.InvariantCulture);

    public static decimal? NumberOrNone(this string cell) => cell.Length == 0 ? null : cell.Number();
}
