using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class GradeConfiguration : IEntityTypeConfiguration<Grade>
{
    public void Configure(EntityTypeBuilder<Grade> grade)
    {
        grade.ToTable("grades");
        grade.HasKey(g => g.Code);
        grade.Property(g => g.Code).HasMaxLength(Lengths.Code);
        grade.Property(g => g.Name).HasMaxLength(Lengths.Name);
        grade.Property(g => g.Tests).HasJson();
        grade.Property(g => g.Tree).HasJson();
        grade.Property(g => g.Parties).HasJson();
    }
}
