### Spots. From memory, as coached in FIBA countries.

top = la frontal
    .to = hasta {top}
    .toward = hacia {top}
    .at = en {top}
    .near = cerca de {top}
deep-top = la frontal lejana
    .to = hasta {deep-top}
    .toward = hacia {deep-top}
    .at = en {deep-top}
    .near = cerca de {deep-top}
logo = el centro del campo
    .to = hasta {logo}
    .toward = hacia {logo}
    .at = en {logo}
    .near = cerca del centro del campo
slot = el lado { $side ->
        [left] izquierdo
       *[right] derecho
    } de la frontal
    .to = hasta {slot}
    .toward = hacia {slot}
    .at = en {slot}
    .near = cerca del lado { $side ->
        [left] izquierdo
       *[right] derecho
    } de la frontal
wing = el ala { $side ->
        [left] izquierda
       *[right] derecha
    }
    .to = hasta {wing}
    .toward = hacia {wing}
    .at = en {wing}
    .near = cerca del ala { $side ->
        [left] izquierda
       *[right] derecha
    }
low-wing = el ala { $side ->
        [left] izquierda
       *[right] derecha
    } baja
    .to = hasta {low-wing}
    .toward = hacia {low-wing}
    .at = en {low-wing}
    .near = cerca del ala { $side ->
        [left] izquierda
       *[right] derecha
    } baja
corner = la esquina { $side ->
        [left] izquierda
       *[right] derecha
    }
    .to = hasta {corner}
    .toward = hacia {corner}
    .at = en {corner}
    .near = cerca de {corner}
short-corner = la esquina corta { $side ->
        [left] izquierda
       *[right] derecha
    }
    .to = hasta {short-corner}
    .toward = hacia {short-corner}
    .at = en {short-corner}
    .near = cerca de {short-corner}
dunker-spot = el lado { $side ->
        [left] izquierdo
       *[right] derecho
    } del fondo de la zona
    .to = hasta {dunker-spot}
    .toward = hacia {dunker-spot}
    .at = en {dunker-spot}
    .near = cerca del lado { $side ->
        [left] izquierdo
       *[right] derecho
    } del fondo de la zona
block = el poste bajo { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {block}
    .toward = hacia {block}
    .at = en {block}
    .near = cerca del poste bajo { $side ->
        [left] izquierdo
       *[right] derecho
    }
mid-post = el poste medio { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {mid-post}
    .toward = hacia {mid-post}
    .at = en {mid-post}
    .near = cerca del poste medio { $side ->
        [left] izquierdo
       *[right] derecho
    }
elbow = el codo { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {elbow}
    .toward = hacia {elbow}
    .at = en {elbow}
    .near = cerca del codo { $side ->
        [left] izquierdo
       *[right] derecho
    }
high-elbow = el codo alto { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {high-elbow}
    .toward = hacia {high-elbow}
    .at = en {high-elbow}
    .near = cerca del codo alto { $side ->
        [left] izquierdo
       *[right] derecho
    }
high-post = el poste alto
    .to = hasta {high-post}
    .toward = hacia {high-post}
    .at = en {high-post}
    .near = cerca del poste alto
nail = el centro de la línea de tiros libres
    .to = hasta {nail}
    .toward = hacia {nail}
    .at = en {nail}
    .near = cerca del centro de la línea de tiros libres
mid-paint = el centro de la zona
    .to = hasta {mid-paint}
    .toward = hacia {mid-paint}
    .at = en {mid-paint}
    .near = cerca del centro de la zona
low-paint = el fondo de la zona
    .to = hasta {low-paint}
    .toward = hacia {low-paint}
    .at = en {low-paint}
    .near = cerca del fondo de la zona
rim = el aro
    .to = hasta {rim}
    .toward = hacia {rim}
    .at = bajo {rim}
    .near = cerca del aro
blob = el saque de fondo { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {blob}
    .toward = hacia {blob}
    .at = en {blob}
    .near = cerca del saque de fondo { $side ->
        [left] izquierdo
       *[right] derecho
    }
slob = el saque de banda { $side ->
        [left] izquierdo
       *[right] derecho
    }
    .to = hasta {slob}
    .toward = hacia {slob}
    .at = en {slob}
    .near = cerca del saque de banda { $side ->
        [left] izquierdo
       *[right] derecho
    }
