using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Demo;

/// <summary>What comes from outside the bench: an inspector's result, a ship, a note to the next shift, a blend made by hand.</summary>
internal sealed class DemoVisitors(DemoCast cast, DemoDays days, DemoSteps steps)
{
    // Days before the first start of the batches that the visits are about.
    private const int Undecided = 7;
    private const int LevelsDisagree = 6;
    private static readonly int[] Shipped = [4, 8];

    private const decimal InspectorFindsMore = 2.4m;

    public IEnumerable<DemoStep> Steps() =>
        [new(days.At(days.Count - 1, 15), Ship), new(days.Ago(250), OnCall), new(days.Ago(240), HandOver), new(days.Ago(100), Inspect), .. HandBlend()];

    private async Task OnCall(CancellationToken cancel)
    {
        var turn = new KeepOnCall.Turn(cast[DemoPeople.Kola].Id, "555 01 02 (invented)", days.Ago(240), days.Now.AddDays(7));
        DemoCast.Must(await new KeepOnCall(cast.Open, cast.Clock).Add(cast[DemoPeople.Tessa], turn, cancel), "putting somebody on call");
    }

    private async Task HandOver(CancellationToken cancel)
    {
        var batch = DemoBatch.Of(days, days.Count - LevelsDisagree);
        var note = new Handover($"{batch.Tank} is being circulated. When the control room calls, sample at three levels; the hold stays until they agree.", "the day shift", days.Ago(-180));
        var request = new WriteHandover.Request(DemoName.Id("hand over"), batch.Number, note);
        DemoCast.Must(await new WriteHandover(cast.Open, cast.Clock).Run(cast[DemoPeople.Kola], request, cancel), "handing over");
    }

    // The batch that nobody could decide on: the inspector's laboratory finds more, by more than R.
    private async Task Inspect(CancellationToken cancel)
    {
        var batch = DemoBatch.Of(days, days.Count - Undecided);
        var request = new PartyResultRequest
        {
            CommandId = DemoName.Id("inspector's result"),
            Batch = batch.Number,
            Kind = PartyKind.Inspector,
            Party = "Skerry Inspection (invented)",
            Laboratory = "Skerry, Northmere office",
            Quantity = "DVPE",
            Method = batch.Product.Method,
            Value = DemoReading.Kpa(batch.Market.Highest + InspectorFindsMore),
            MeasuredOn = days.Of(days.Ago(100)),
            Reference = "SK-2211",
        };
        DemoCast.Must(await new EnterPartyResult(cast.Open, cast.Clock).Run(cast[DemoPeople.Tessa], request, cancel), "entering an inspector's result");
    }

    private async Task Ship(CancellationToken cancel)
    {
        var numbers = Shipped.Select(back => DemoBatch.NumberOf(days, days.Count - back)).ToList();
        var seen = await new ReadCargoBatches(cast.Open).Run(numbers, cancel);
        var request = new CargoRequest
        {
            CommandId = DemoName.Id("cargo certificate"),
            Ship = "Tern of Northmere (invented)",
            Voyage = "NM-44",
            Port = "Northmere",
            Berth = "Jetty 1",
            Stage = LoadingStage.BeforeLoading,
            Product = DemoProduct.Plain.Grade.Name,
            Reference = "cargo order 7715 (invented)",
            Tanks = [.. seen.Select(b => new CargoTankRequest(b.Batch.TankCode, b.Batch.Number, b.InForce!.Id))],
            Password = DemoPeople.Named(DemoPeople.Tessa).Password,
        };
        DemoCast.Must(await new IssueCargoCertificate(cast.Open, cast.Clock, new DemoSignature()).Run(cast[DemoPeople.Tessa], request, cancel), "certifying a cargo");
    }

    // Of the last blendstock that left: two bottles more were drawn from the line, one measured, one blended with ethanol.
    private IEnumerable<DemoStep> HandBlend()
    {
        var batch = DemoBatch.Of(days, days.Count - 2) with
        {
            Number = DemoBatch.NumberOf(days, days.Count + 5), Tank = null, Analyst = DemoPeople.Ines, Instrument = DemoInstrumentActs.First, Back = 0,
        };
        var market = DemoMarket.On(DemoProduct.Blendstock, days.Today);
        batch = batch with { Market = market, Value = market.Target };
        var sample = batch.Sample("for a hand blend", 3);
        return
        [
            steps.Registered(batch, days.Ago(200), days.Ago(-600), "A hand blend is asked for: the buyer adds ethanol at the terminal."),
            steps.Brought(DemoPeople.Ines, sample, days.Ago(140), days.Ago(105)),
            steps.Measured(batch, sample, 1, days.Ago(58), batch.Bottle(sample, 1)),
            new(days.Ago(40), cancel => Blend(sample, cancel)),
        ];
    }

    private async Task Blend(DemoSample sample, CancellationToken cancel)
    {
        var now = cast.Clock.GetUtcNow();
        var request = new HandBlendRequest
        {
            CommandId = DemoName.Id("hand blend"),
            Blendstock = await cast.MadeBy(sample.Command, cancel),
            ContainerNumber = 2,
            EthanolLot = "E-26-07",
            BlendstockVolume = "630 mL",
            EthanolVolume = "70 mL",
            Temperature = "0.5",
            Containers = [.. Enumerable.Range(1, 2).Select(_ => new ContainerRequest(Core.Methods.ContainerKind.GlassBottle, 250m, 75m))],
            Confirmed = [.. HandBlendRecipe.Cautions.Select(c => new ConfirmedStep(c.Code, now))],
        };
        DemoCast.Must(await new MakeHandBlend(cast.Open, cast.Clock).Run(cast[DemoPeople.Ines], request, cancel), "making a hand blend");
    }
}
