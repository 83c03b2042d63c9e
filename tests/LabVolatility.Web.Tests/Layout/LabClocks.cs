using LabVolatility.Web.Layout;
using LabVolatility.Web.Setup;
using Microsoft.Extensions.Time.Testing;

namespace LabVolatility.Web.Tests.Layout;

/// <summary>The clock of a page without a laboratory behind it.</summary>
internal static class LabClocks
{
    /// <summary>Stands still; in UTC, as long as no settings were read.</summary>
    public static LabClock At(DateTimeOffset now) => new(new LaboratoryFacts(null!, null!), new FakeTimeProvider(now));
}
