package hushmaze.sound.quick;

/** A column of complex numbers. */
final class CVector {
    final double[] re;
    final double[] im;

    CVector(int size) {
        re = new double[size];
        im = new double[size];
    }

    int size() {
        return re.length;
    }

    void set(int i, double valueRe, double valueIm) {
        re[i] = valueRe;
        im[i] = valueIm;
    }

    CVector chosen(int[] chosen) {
        CVector part = new CVector(chosen.length);
        for (int i = 0; i < chosen.length; i++) {
            part.set(i, re[chosen[i]], im[chosen[i]]);
        }
        return part;
    }

    CVector inverted() {
        CVector inverse = new CVector(size());
        for (int i = 0; i < size(); i++) {
            double size = re[i] * re[i] + im[i] * im[i];
            inverse.set(i, re[i] / size, -im[i] / size);
        }
        return inverse;
    }
}
