using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Records;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Certificates;

/// <summary>The shore tanks of a cargo: a batch picked shows at once what would stand on the paper.</summary>
public sealed partial class CargoTankRows : ComponentBase
{
    [Parameter, EditorRequired]
    public CargoEntry Entry { get; set; } = null!;

    [Parameter, EditorRequired]
    public ReadCargoBatches.Choices Choices { get; set; } = null!;

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    [Inject]
    private ReadCargoBatches Read { get; set; } = null!;

    // A batch that was picked before stays in its list, whatever became of it.
    private IEnumerable<ReadCargoBatches.Choice> Offered(CargoTankEntry tank) =>
        string.IsNullOrEmpty(tank.Batch) || Choices.Batches.Any(b => b.Number == tank.Batch)
            ? Choices.Batches
            : Choices.Batches.Prepend(new ReadCargoBatches.Choice(tank.Batch, tank.Tank, "no longer offered", default));

    private async Task LookAsync(CargoTankEntry tank)
    {
        tank.Seen = !string.IsNullOrEmpty(tank.Batch) && await Read.Run([tank.Batch]) is [var seen, ..] ? seen : null;
        tank.Tank = tank.Seen?.Batch.TankCode ?? tank.Tank;
    }
}
