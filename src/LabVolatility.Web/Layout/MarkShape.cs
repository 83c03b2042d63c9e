namespace LabVolatility.Web.Layout;

/// <summary>How a status is drawn on a 16 by 16 field.</summary>
/// <param name="Word">The status word.</param>
/// <param name="Tone">good, bad, open or calm.</param>
/// <param name="Outline">Stroked path.</param>
/// <param name="Solid">Filled path.</param>
/// <param name="Cut">Stroked in the paper's colour, over the filled path.</param>
/// <param name="Dashed">The outline is broken: something is missing.</param>
public sealed record MarkShape(string Word, string Tone, string Outline = "", string Solid = "", string Cut = "", bool Dashed = false);
