using Bunit;
using LabVolatility.Core.Limits;
using LabVolatility.Web.Limits;
using Xunit;

namespace LabVolatility.Web.Tests.Limits;

public sealed class PickedTableTests : BunitContext
{
    [Fact]
    public void PickedTable_AllowanceGiven_OpensIntoBaseAllowanceAndEdge()
    {
        var pick = LimitPicker.Pick(PublishedAreas.All, new ProductQuery(
            "gasoline", ProductState.Finished, "US-9.0", PointOfCompliance.Terminal, new DateOnly(2026, 5, 10), 9.8m));

        var table = Render<PickedTable>(p => p.Add(t => t.Picked, pick.Limits));

        Assert.Contains("Allowance of 1 psi", table.Markup, StringComparison.Ordinal);
        Assert.Equal([9.0m, 1.0m, 10.0m], PickedTable.Steps(pick.Limits[0]).Select(s => s.Value!.Value));
    }
}
