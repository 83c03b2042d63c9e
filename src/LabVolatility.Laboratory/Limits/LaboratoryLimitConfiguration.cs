using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Limits;

internal sealed class LaboratoryLimitConfiguration : IEntityTypeConfiguration<LaboratoryLimit>
{
    public void Configure(EntityTypeBuilder<LaboratoryLimit> limit)
    {
        limit.ToTable("laboratory_limits");
        limit.Ignore(l => l.Days);
        limit.Property(l => l.Key).HasMaxLength(Lengths.Name);
        limit.Property(l => l.AreaCode).HasMaxLength(Lengths.Code);
        limit.Property(l => l.GradeCode).HasMaxLength(Lengths.Code);
        limit.Property(l => l.Quantity).HasMaxLength(Lengths.Code);
        limit.Property(l => l.Correlation).HasMaxLength(Lengths.Name);
        limit.Property(l => l.Unit).HasMaxLength(Lengths.Unit);
        limit.Property(l => l.Methods).HasJson();
        limit.Property(l => l.Source).HasMaxLength(Lengths.Note);
        limit.HasIndex(l => l.Key);
        limit.HasIndex(l => l.AreaCode);
        limit.HasOne<Person>().WithMany().HasForeignKey(l => l.DraftedBy);
        limit.HasOne<Person>().WithMany().HasForeignKey(l => l.ApprovedBy);
    }
}
