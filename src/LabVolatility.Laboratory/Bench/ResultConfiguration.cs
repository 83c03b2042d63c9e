using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Bench;

internal sealed class ResultConfiguration : IEntityTypeConfiguration<Result>
{
    public void Configure(EntityTypeBuilder<Result> result)
    {
        result.ToTable("results");
        result.Property(r => r.Quantity).HasMaxLength(Lengths.Code);
        result.Property(r => r.Correlation).HasMaxLength(Lengths.Name);
        result.Property(r => r.CorrelationVersion).HasMaxLength(Lengths.Name);
        result.Property(r => r.Exact).HasMaxLength(Lengths.Code);
        result.Property(r => r.Reported).HasMaxLength(Lengths.Code);
        result.Property(r => r.Unit).HasMaxLength(Lengths.Unit);
        result.Property(r => r.Suffix).HasMaxLength(Lengths.Unit);
        result.Property(r => r.Arithmetic).HasJson();
        result.HasIndex(r => new { r.DeterminationId, r.Revision });
        result.HasIndex(r => new { r.Quantity, r.DeterminationId });
    }
}
