using LabVolatility.Core.Methods;
using LabVolatility.Core.Published;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Commands;

/// <summary>One check as JSON.</summary>
internal sealed record VerifiedRow(
    string What, string Source, string Status, decimal Expected, decimal? Computed, decimal? Difference, decimal Tolerance, bool Passed)
{
    public static VerifiedRow Of(PublishedCheck check) => new(
        check.What, check.Source, check.Status.Text(), Rounding.Trim(check.Expected), Trim(check.Computed), Trim(check.Difference),
        Rounding.Trim(check.Tolerance), check.Passed);

    private static decimal? Trim(decimal? number) => number is { } known ? Rounding.Trim(known) : null;
}
