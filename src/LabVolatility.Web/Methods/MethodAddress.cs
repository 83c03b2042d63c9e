using LabVolatility.Core.Methods;

namespace LabVolatility.Web.Methods;

/// <summary>A method's page: "ASTM D5191" is at /methods/ASTM-D5191.</summary>
public static class MethodAddress
{
    public static string Of(string designation) => $"/methods/{Uri.EscapeDataString(designation.Replace(' ', '-'))}";

    /// <summary>The method that an address names, with a space or a hyphen; null where none ships.</summary>
    public static TestMethod? Find(string address) =>
        TestMethods.All.FirstOrDefault(m => string.Equals(m.Designation.Replace(' ', '-'), address.Replace(' ', '-'), StringComparison.OrdinalIgnoreCase));
}
