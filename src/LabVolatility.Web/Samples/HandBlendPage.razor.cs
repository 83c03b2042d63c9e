using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace LabVolatility.Web.Samples;

/// <summary>Records a hand blend of a blendstock sample.</summary>
public sealed partial class HandBlendPage : LabPage
{
    private readonly Guid _command = Guid.NewGuid();
    private readonly List<ContainerRow> _rows = [new() { Volume = "250 mL" }, new() { Volume = "250 mL" }];
    private readonly Dictionary<string, DateTimeOffset> _confirmed = [];
    private SampleSheet? _sheet;
    private HandBlendSheet? _blends;
    private IReadOnlyList<Problem> _problems = [];
    private int _container;
    private string? _blendstock;
    private string? _ethanol;
    private string? _lot;
    private string? _temperature;
    private string? _note;
    private bool _busy;

    public override string Title => $"Hand blend of {Number}";

    public override Right Needs => Right.Determine;

    [Parameter]
    public string Number { get; set; } = "";

    [Inject]
    private ReadSample Read { get; set; } = null!;

    [Inject]
    private ReadHandBlends ReadBlends { get; set; } = null!;

    [Inject]
    private MakeHandBlend Make { get; set; } = null!;

    private string? Said => HandBlendRecipe.Read(Request([]), []).Nominal is { } nominal
        ? $"{nominal.Expression} = {Rounding.Text(nominal.Value!.Value, 1)} % (V/V) ethanol, nominal. An allowance needs a measured content."
        : null;

    protected override bool Concerns(Notice notice) => _sheet?.Sample is { } sample && notice.IsAbout<Sample>(sample.Id);

    protected override async Task LoadAsync(CancellationToken cancellationToken)
    {
        _sheet = await Read.Run(Number, cancellationToken);
        _blends = await ReadBlends.Run(Number, cancellationToken);
        if (_sheet is null || _blends is null)
            Missing = $"There is no sample {Number}.";
    }

    private void Confirm(string code, bool confirmed)
    {
        if (confirmed)
            _confirmed[code] = Clock.Now.ToUniversalTime();
        else
            _confirmed.Remove(code);
    }

    private HandBlendRequest Request(IReadOnlyList<ContainerRequest> containers) => new()
    {
        CommandId = _command,
        Blendstock = Number,
        ContainerNumber = _container,
        EthanolLot = _lot,
        BlendstockVolume = _blendstock,
        EthanolVolume = _ethanol,
        Temperature = _temperature,
        Containers = containers,
        Confirmed = [.. _confirmed.Select(c => new ConfirmedStep(c.Key, c.Value))],
        Note = _note,
    };

    private async Task MakeAsync()
    {
        if (_busy)
            return;
        _busy = true;
        try
        {
            var problems = new List<Problem>();
            var containers = ContainerRow.Read(_rows, problems, received: false);
            if (_container == 0)
                problems.Insert(0, new Problem("/containerNumber", "Pick the bottle of blendstock that you opened."));
            _problems = problems;
            if (problems.Count > 0)
                return;
            var answer = await Make.Run(await ActorNowAsync(), Request(containers), Leaving);
            _problems = answer.Problems;
            if (answer.Ok)
                Addresses.NavigateTo($"/samples/{answer.Value}?new=yes");
        }
        finally
        {
            _busy = false;
        }
    }
}
