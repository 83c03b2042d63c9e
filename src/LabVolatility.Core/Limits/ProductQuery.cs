using LabVolatility.Core.Methods;

namespace LabVolatility.Core.Limits;

/// <summary>The product, and where and when it is to be used.</summary>
/// <param name="Grade">The grade's name.</param>
/// <param name="State">Finished, blendstock or hand blend.</param>
/// <param name="Area">The area's code.</param>
/// <param name="Point">The point of compliance.</param>
/// <param name="Date">A local date of the area.</param>
/// <param name="EthanolPercent">The measured ethanol content, % (V/V); null: not measured.</param>
/// <param name="Kind">What the grade is; limits for all gasoline hold for gasoline and ethanol blends.</param>
public sealed record ProductQuery(
    string Grade,
    ProductState State,
    string Area,
    PointOfCompliance Point,
    DateOnly Date,
    decimal? EthanolPercent,
    SampleKind Kind = SampleKind.Gasoline);
