using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Bench;

/// <summary>The readable address of a test: /bench/S2600417B/EN-13016-1.</summary>
public static class BenchAddress
{
    public static string Of(string sample, string method, int? container = null) =>
        $"/bench/{sample}/{Part(method)}{(container is { } number ? $"?container={number}" : "")}";

    /// <summary>The method that a part of an address names, or the part itself where none is named.</summary>
    public static string Method(string part) =>
        TestMethods.All.FirstOrDefault(m => Part(m.Designation).Equals(Part(part), StringComparison.OrdinalIgnoreCase))?.Designation ?? part;

    private static string Part(string method) => method.Replace(' ', '-');
}
